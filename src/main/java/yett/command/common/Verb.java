package yett.command.common;

import java.util.List;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;
import yett.console.Block;
import yett.console.Console;

/** A command of the program: one verb with its words. */
public abstract class Verb implements Command {
  /** Exit statuses after the BSD list sysexits, so that scripts can tell them apart. */
  public static final ExitStatus OK = ExitStatus.OK;

  public static final ExitStatus USAGE = new ExitStatus(64, "");
  public static final ExitStatus DATA = new ExitStatus(65, "");
  public static final ExitStatus NO_INPUT = new ExitStatus(66, "");

  /** Not an error: what was compared is not the same. */
  public static final ExitStatus DIFFERENT = new ExitStatus(1, "");

  private final String name;
  private final String description;
  private final String usage;
  private final List<CommandOption> options;

  /**
   * @param usage the command line, then what its words mean, for {@code help}
   */
  public Verb(String name, String description, String usage, CommandOption... options) {
    this.name = name;
    this.description = description;
    this.usage = usage;
    this.options = List.of(options);
  }

  public static CommandOption flag(String name, String description) {
    return CommandOption.with().longName(name).description(description).type(boolean.class).build();
  }

  public static CommandOption value(String name, String description) {
    return CommandOption.with().longName(name).description(description).type(String.class).build();
  }

  public static boolean has(CommandContext context, String option) {
    return context.getOptionByLongName(option) != null;
  }

  /** The value of an option, or what is usual without it. */
  public static String option(CommandContext context, String option, String usual) {
    CommandOption given = context.getOptionByLongName(option);
    return given == null ? usual : given.value();
  }

  public static List<String> words(CommandContext context) {
    return context.parsedInput().arguments().stream().map(a -> a.value()).toList();
  }

  @Override
  public String getName() {
    return name;
  }

  @Override
  public String getDescription() {
    return description;
  }

  @Override
  public String getHelp() {
    return usage;
  }

  /**
   * Shows what {@code help} tells of this command, or of words behind it.
   *
   * @throws UsageException if the words mean nothing here
   */
  public void help(List<String> about, Console console) {
    if (!about.isEmpty()) {
      throw new UsageException(
          "There is no command \"" + name + " " + Words.shortened(String.join(" ", about)) + "\".");
    }
    console.show(Block.paragraph(description), Block.paragraph(usage));
  }

  /**
   * Tells in its own way what is wrong with a command line of this command, to other programs.
   *
   * @param words as they were typed, the name among them
   * @return whether it did; if not, people are told
   */
  public boolean tells(UsageException wrong, List<String> words) {
    return false;
  }

  @Override
  public List<CommandOption> getOptions() {
    return options;
  }
}
