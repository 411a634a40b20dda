package yett.command;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.completion.CompletionContext;
import org.springframework.shell.core.command.completion.CompletionProposal;
import yett.command.common.CommandHelp;
import yett.console.Completer;

/**
 * Completes a command line: the command's name, its options, and its words through the completion
 * provider of the command.
 */
record CommandCompletion(CommandRegistry commands) implements Completer {
  /** A word with or without quotes; the closing quote may be missing. */
  private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)(\"?)|(\\S+)");

  /** The words of a line up to the cursor. The last one is the one being typed. */
  private record Typed(String before, List<String> words) {
    static Typed of(String line) {
      List<String> words = new ArrayList<>();
      int last = line.length();
      boolean goesOn = false;
      Matcher matcher = WORD.matcher(line);
      while (matcher.find()) {
        words.add(matcher.group(1) == null ? matcher.group(3) : matcher.group(1));
        last = matcher.start();
        goesOn = matcher.end() == line.length() && !"\"".equals(matcher.group(2));
      }
      if (!goesOn) {
        words.add("");
        last = line.length();
      }
      return new Typed(line.substring(0, last), words);
    }

    String current() {
      return words.get(words.size() - 1);
    }
  }

  @Override
  public List<Completion> after(String line) {
    String start = line.stripLeading();
    Stream<Completion> names =
        CommandHelp.listed(commands).stream()
            .map(Command::getName)
            .filter(name -> name.startsWith(start))
            .map(name -> new Completion(name, name, true));
    return Stream.concat(names, words(Typed.of(start))).distinct().toList();
  }

  private Stream<Completion> words(Typed typed) {
    int named = Math.min(3, typed.words().size() - 1);
    Command command = null;
    while (named > 0 && command == null) {
      command = commands.getCommandByName(String.join(" ", typed.words().subList(0, named)));
      named -= command == null ? 1 : 0;
    }
    if (command == null) {
      return Stream.empty();
    }
    CommandOption option = valued(command, typed.words());
    Stream<CompletionProposal> options =
        option != null
            ? Stream.empty()
            : command.getOptions().stream().map(o -> new CompletionProposal("--" + o.longName()));
    int last = typed.words().size() - 1;
    CompletionContext context =
        new CompletionContext(
            typed.words().subList(named, last + 1),
            last - named,
            typed.current().length(),
            command,
            option);
    List<CompletionProposal> proposed = command.getCompletionProvider().apply(context);
    return Stream.concat(proposed.stream(), options)
        .filter(p -> p.value().startsWith(typed.current()))
        .map(p -> completion(typed, p));
  }

  /** The option whose value is being typed; null if none is. */
  private static CommandOption valued(Command command, List<String> words) {
    String before = words.size() < 2 ? "" : words.get(words.size() - 2);
    return command.getOptions().stream()
        .filter(o -> o.type() != boolean.class && before.equals("--" + o.longName()))
        .findFirst()
        .orElse(null);
  }

  private static Completion completion(Typed typed, CompletionProposal proposal) {
    String word = proposal.value();
    boolean blanks = word.contains(" ") || word.contains("\"");
    String quoted =
        blanks
            ? "\""
                + word.replace("\\", "\\\\").replace("\"", "\\\"")
                + (proposal.complete() ? "\"" : "")
            : word;
    return new Completion(typed.before() + quoted, word, proposal.complete());
  }
}
