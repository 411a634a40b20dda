package yett.command.common;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;
import yett.console.Block;

/** Writes the help texts of commands. */
public final class CommandHelp {
  private CommandHelp() {}

  /**
   * The commands that the help lists, by name. Commands that only explain another one are left out.
   * (They cannot be marked as hidden, because Spring Shell does not run hidden commands.)
   */
  public static List<Command> listed(CommandRegistry commands) {
    return sorted(commands, c -> !c.getName().startsWith("help "));
  }

  /** The commands whose names begin with the name of another command. */
  public static List<Command> under(String name, CommandRegistry commands) {
    return sorted(commands, c -> c.getName().startsWith(name + " "));
  }

  private static List<Command> sorted(CommandRegistry commands, Predicate<Command> which) {
    return commands.getCommands().stream()
        .filter(which)
        .sorted(Comparator.comparing(Command::getName))
        .toList();
  }

  /** One line for each command. */
  public static Block rows(List<Command> commands) {
    return new Block.Rows(
        commands.stream().map(c -> Block.row(c.getName(), c.getDescription())).toList());
  }

  /**
   * The help for one command: what it is for, its words, and the commands under it.
   *
   * @param behind further words that were typed
   * @throws UsageException if there are any, or if there is no such command
   */
  public static List<Block> of(String name, List<String> behind, CommandRegistry commands) {
    if (!behind.isEmpty() || commands.getCommandByName(name) == null) {
      String typed = (name + " " + String.join(" ", behind)).strip();
      throw new UsageException("There is no command " + Words.quoted(typed) + ".");
    }
    Command command = commands.getCommandByName(name);
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.paragraph(command.getDescription()));
    blocks.add(Block.paragraph(command.getHelp()));
    List<Command> under = under(name, commands);
    if (!under.isEmpty()) {
      blocks.add(Block.heading("Subcommands"));
      blocks.add(rows(under));
    }
    return blocks;
  }
}
