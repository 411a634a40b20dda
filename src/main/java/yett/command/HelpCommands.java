package yett.command;

import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.command.common.CommandHelp;
import yett.command.common.Completions;
import yett.console.Block;
import yett.console.Console;

/** {@code help}: lists the commands and explains each. */
public record HelpCommands(Console console) {

  @Command(
      name = "help",
      description = "all commands, or the usage of one",
      help = "Usage: help [COMMAND]",
      completionProvider = Completions.COMMANDS)
  public void help(CommandContext context, @Arguments List<String> words) {
    CommandRegistry commands = context.commandRegistry();
    if (words.isEmpty()) {
      console.show(
          Block.heading("Commands"),
          CommandHelp.rows(CommandHelp.listed(commands)),
          Block.paragraph("help COMMAND shows how to use one; quit leaves."));
    } else {
      console.show(CommandHelp.of(String.join(" ", words), List.of(), commands));
    }
  }
}
