package yett.command;

import java.util.Comparator;
import java.util.List;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.Subcommands;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Words;
import yett.command.common.Workplace;
import yett.console.Block;

/** {@code help}: what the program can be told to do. */
public final class HelpVerb extends Verb {
  private final Workplace place;

  public HelpVerb(Workplace place) {
    super("help", "all commands, or the words of one", "Usage: help [COMMAND]");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<String> words = words(context);
    for (int length = words.size(); length > 0; length--) {
      String name = String.join(" ", words.subList(0, length));
      if (context.commandRegistry().getCommandByName(name) instanceof Verb verb) {
        verb.help(words.subList(length, words.size()), place.console());
        List<Command> under = Subcommands.of(name, context.commandRegistry());
        if (!under.isEmpty()) {
          place.console().show(Block.heading("With one more word"), Subcommands.rows(under));
        }
        return OK;
      }
    }
    if (!words.isEmpty()) {
      throw new UsageException(
          "There is no command \"" + Words.shortened(String.join(" ", words)) + "\".");
    }
    List<Command> all =
        context.commandRegistry().getCommands().stream()
            .filter(Verb.class::isInstance)
            .sorted(Comparator.comparing(Command::getName))
            .toList();
    place
        .console()
        .show(
            Block.heading("Commands"),
            Subcommands.rows(all),
            Block.paragraph("help COMMAND tells the words of one; quit leaves."));
    return OK;
  }
}
