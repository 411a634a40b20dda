package yett.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.CommandParser;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.ParsedInput;
import yett.command.common.CommandHelp;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.knowledge.Names;

/**
 * Parses a command line word by word, so that file names keep their blanks and a flag does not take
 * the next word as its value.
 */
public final class CommandLine implements CommandParser {
  private static final Pattern WORD =
      Pattern.compile("(?<name>[^\\s\"=]+=)?\"(?<quoted>(?:[^\"\\\\]|\\\\.)*)\"|(?<bare>\\S+)");

  private final CommandRegistry commands;

  public CommandLine(CommandRegistry commands) {
    this.commands = commands;
  }

  @Override
  public ParsedInput parse(String line) {
    return parse(words(line));
  }

  /**
   * Splits a line into words. A word in quotes keeps its blanks, also behind a name: {@code
   * opening="6 m"}.
   */
  static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      String quoted = matcher.group("quoted");
      String name = matcher.group("name");
      words.add(
          quoted == null
              ? matcher.group("bare")
              : (name == null ? "" : name) + quoted.replaceAll("\\\\(.)", "$1"));
    }
    return words;
  }

  /**
   * @throws UsageException if there is no such command or option
   */
  public ParsedInput parse(List<String> typed) {
    List<String> words = asHelp(typed);
    int named = longestName(words).orElseThrow(() -> noCommand(words));
    String name = String.join(" ", words.subList(0, named));
    Command command = commands.getCommandByName(name);
    ParsedInput.Builder parsed = ParsedInput.builder().commandName(name);
    int argument = 0;
    boolean onlyArguments = false;
    for (int i = named; i < words.size(); i++) {
      String word = words.get(i);
      if (!onlyArguments && word.equals("--")) {
        onlyArguments = true;
      } else if (!onlyArguments && word.startsWith("--")) {
        String[] parts = word.substring(2).split("=", 2);
        CommandOption option = option(command, parts[0]);
        boolean flag = option.type() == boolean.class;
        if (!flag && parts.length == 1 && i + 1 >= words.size()) {
          throw new UsageException("--" + parts[0] + " needs a value. " + command.getHelp());
        }
        String value = flag ? "true" : parts.length == 2 ? parts[1] : words.get(++i);
        parsed.addOption(CommandOption.with().longName(parts[0]).value(value).build());
      } else {
        parsed.addArgument(new CommandArgument(argument++, word));
      }
    }
    if (argument > 0 && command instanceof AnnotatedCommand known && !known.takesWords()) {
      throw tooMuch(command, words.get(named));
    }
    return parsed.build();
  }

  /**
   * Turns {@code --help} before or after a command into the help command, because many people type
   * it.
   */
  private static List<String> asHelp(List<String> words) {
    if (!words.contains("--help") && !words.contains("-h")) {
      return words;
    }
    List<String> help = new ArrayList<>(List.of("help"));
    words.stream().filter(w -> !w.startsWith("-")).forEach(help::add);
    return help;
  }

  /**
   * The error for a word too many. If there are longer commands that begin alike, the word may be a
   * misspelt part of their name.
   */
  private UsageException tooMuch(Command command, String word) {
    List<String> under =
        CommandHelp.under(command.getName(), commands).stream().map(Command::getName).toList();
    return under.isEmpty()
        ? new UsageException(command.getHelp())
        : noCommand(command.getName() + " " + word, under);
  }

  private static UsageException noCommand(String typed, List<String> names) {
    return new UsageException(
        "There is no command " + Words.quoted(typed) + ". " + Names.advice(typed, names));
  }

  /** The command whose name these words begin with, if there is one. */
  Optional<Command> command(List<String> words) {
    return longestName(words)
        .map(named -> commands.getCommandByName(String.join(" ", words.subList(0, named))));
  }

  /** How many of the words form the name of a command. */
  private Optional<Integer> longestName(List<String> words) {
    for (int length = Math.min(3, words.size()); length > 0; length--) {
      if (commands.getCommandByName(String.join(" ", words.subList(0, length))) != null) {
        return Optional.of(length);
      }
    }
    return Optional.empty();
  }

  private UsageException noCommand(List<String> words) {
    List<String> names = CommandHelp.listed(commands).stream().map(Command::getName).toList();
    return noCommand(words.isEmpty() ? "" : words.get(0), names);
  }

  private static CommandOption option(Command command, String name) {
    return command.getOptions().stream()
        .filter(o -> name.equals(o.longName()))
        .findFirst()
        .orElseThrow(
            () ->
                new UsageException(
                    "\""
                        + command.getName()
                        + "\" has no option --"
                        + Words.shortened(name)
                        + ". "
                        + command.getHelp()));
  }
}
