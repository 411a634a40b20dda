package yett.command;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.springframework.shell.core.InputProvider;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.InteractiveShellRunner;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.ParsedInput;
import yett.command.common.UsageException;
import yett.console.CommandHistory;
import yett.console.Completer;
import yett.console.Console;
import yett.console.Reply;

/**
 * Asks for commands at a prompt until the person has enough. What commands show and what they fail
 * with is told elsewhere, so all that Spring Shell would print besides is left out.
 */
final class InteractiveShell extends InteractiveShellRunner {
  private static final Set<String> ENOUGH = Set.of("quit", "exit");

  /** Names and numbers of people are not to lie about in a history. */
  private static final Pattern OF_PEOPLE = Pattern.compile("cases\\s+(people|forget)\\b.*");

  private final PrintWriter none = noWriter();

  /**
   * @param prompt stands before every line
   * @param whole makes of the words that were typed those that are meant
   */
  InteractiveShell(
      Console console,
      CommandLine commandLine,
      CommandRegistry commands,
      Failures failures,
      Path history,
      String prompt,
      UnaryOperator<List<String>> whole) {
    super(
        lines(
            prompt,
            console,
            new CommandCompletion(commands),
            new CommandHistory(history),
            failures),
        line -> parsed(line, commandLine, failures, whole),
        commands);
  }

  /** Spring Shell ends without a word when there is no line to be had. */
  private static final class Left extends Exception {
    private static final long serialVersionUID = 1;
  }

  private static InputProvider lines(
      String prompt,
      Console console,
      Completer completer,
      CommandHistory history,
      Failures failures) {
    return () -> {
      Reply input = ask(prompt, console, completer, history, failures);
      if (input instanceof Reply.Interrupted) {
        return "";
      }
      if (!(input instanceof Reply.Line line) || ENOUGH.contains(line.text())) {
        throw new Left();
      }
      if (!line.text().isEmpty() && !OF_PEOPLE.matcher(line.text()).matches()) {
        history.add(line.text());
      }
      return line.text();
    };
  }

  /** Spring Shell would keep to itself that there is nothing to read from. */
  private static Reply ask(
      String prompt,
      Console console,
      Completer completer,
      CommandHistory history,
      Failures failures) {
    try {
      return console.askCommand(prompt, completer, history);
    } catch (RuntimeException e) {
      failures.apply(e);
      return new Reply.EndOfInput();
    }
  }

  private static ParsedInput parsed(
      String line, CommandLine commandLine, Failures failures, UnaryOperator<List<String>> whole) {
    failures.clear();
    List<String> words = CommandLine.words(line);
    try {
      words = whole.apply(words);
      return commandLine.parse(words);
    } catch (UsageException e) {
      failures.refused(e, words, commandLine.command(words));
      throw e;
    }
  }

  /** Commands write by the console, which cleans; this one would not. */
  static PrintWriter noWriter() {
    return new PrintWriter(Writer.nullWriter());
  }

  @Override
  public void print(String message) {
    // It is told already: by the command, or by what becomes of failures.
  }

  @Override
  public void flush() {
    none.flush();
  }

  @Override
  public PrintWriter getWriter() {
    return none;
  }

  @Override
  public InputReader getReader() {
    return new InputReader() {};
  }
}
