package yett.shell;

import java.util.Comparator;
import java.util.List;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.console.Block;

/** {@code help}: what the program can be told to do. */
final class HelpVerb extends Verb {
  private final Desk desk;

  HelpVerb(Desk desk) {
    super("help", "all commands, or the words of one", "Usage: help [COMMAND]");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    String name = String.join(" ", words(context));
    Command command = name.isEmpty() ? null : context.commandRegistry().getCommandByName(name);
    if (command != null) {
      desk.console()
          .show(Block.paragraph(command.getDescription()), Block.paragraph(command.getHelp()));
      return OK;
    }
    if (!name.isEmpty()) {
      throw new UsageException("There is no command \"" + Words.shortened(name) + "\".");
    }
    List<Block.Row> rows =
        context.commandRegistry().getCommands().stream()
            .filter(Verb.class::isInstance)
            .sorted(Comparator.comparing(Command::getName))
            .map(c -> Block.row(c.getName(), c.getDescription()))
            .toList();
    desk.console()
        .show(
            Block.heading("Commands"),
            new Block.Rows(rows),
            Block.paragraph("help COMMAND tells the words of one; quit leaves."));
    return OK;
  }
}
