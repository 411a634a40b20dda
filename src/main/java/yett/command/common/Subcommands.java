package yett.command.common;

import java.util.Comparator;
import java.util.List;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandRegistry;
import yett.console.Block;
import yett.knowledge.Names;

/** The commands whose names begin with another's. */
public final class Subcommands {
  private Subcommands() {}

  public static List<Command> of(String name, CommandRegistry commands) {
    return commands.getCommands().stream()
        .filter(c -> c.getName().startsWith(name + " "))
        .sorted(Comparator.comparing(Command::getName))
        .toList();
  }

  /** A line each. */
  public static Block rows(List<Command> commands) {
    return new Block.Rows(
        commands.stream().map(c -> Block.row(c.getName(), c.getDescription())).toList());
  }

  /**
   * @throws UsageException if there are words, for none of the commands takes them
   */
  public static void refuseWords(Verb verb, CommandContext context) {
    List<String> words = Verb.words(context);
    if (!words.isEmpty()) {
      String typed = verb.getName() + " " + words.get(0);
      throw new UsageException(
          "There is no command \""
              + Words.shortened(typed)
              + "\". "
              + Names.advice(
                  typed,
                  of(verb.getName(), context.commandRegistry()).stream()
                      .map(Command::getName)
                      .toList()));
    }
  }
}
