package yett.shell;

import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.console.Block;

/** {@code knowledge} alone: what a trainer can do. */
final class KnowledgeVerb extends Verb {
  private final Desk desk;

  KnowledgeVerb(Desk desk) {
    super(
        "knowledge",
        "what a trainer can do with a rule base",
        "Usage: knowledge COMMAND ... . Alone it lists its commands; the way through them is"
            + " docs/trainer.md.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Subcommands.refuseWords(this, context);
    desk.console()
        .show(
            Subcommands.rows(Subcommands.of(getName(), context.commandRegistry())),
            Block.paragraph("help knowledge COMMAND tells the words of one."));
    return OK;
  }
}
