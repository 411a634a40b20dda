package yett.command.knowledge;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.Subcommands;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;

/** {@code knowledge} alone: what a trainer can do. */
public final class KnowledgeVerb extends Verb {
  private final Workplace place;

  public KnowledgeVerb(Workplace place) {
    super(
        "knowledge",
        "what a trainer can do with a rule base",
        "Usage: knowledge COMMAND ... . Alone it lists its commands; the way through them is"
            + " docs/trainer.md.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Subcommands.refuseWords(this, context);
    place
        .console()
        .show(
            Subcommands.rows(Subcommands.of(getName(), context.commandRegistry())),
            Block.paragraph("help knowledge COMMAND tells the words of one."));
    return OK;
  }
}
