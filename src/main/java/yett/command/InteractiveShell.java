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
 * Prompts for commands until the person leaves. Commands print their own output and {@link
 * Failures} reports errors, so whatever Spring Shell would print as well is suppressed.
 */
final class InteractiveShell extends InteractiveShellRunner {
  private static final Set<String> ENOUGH = Set.of("quit", "exit");

  /**
   * Commands that are kept out of the history, because they contain people's names and telephone
   * numbers.
   */
  private static final Pattern OF_PEOPLE = Pattern.compile("cases\\s+(people|forget)\\b.*");

  private final PrintWriter none = noWriter();

  /**
   * @param prompt the text before every line
   * @param whole completes the typed words to a full command
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

  /** Thrown when the person leaves. Spring Shell then ends without a message. */
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

  /**
   * Reads a line. If there is nothing to read from, it says so; Spring Shell would end without a
   * word.
   */
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

  /**
   * A writer that discards everything. Commands write through the console, which cleans the text;
   * Spring Shell's writer does not.
   */
  static PrintWriter noWriter() {
    return new PrintWriter(Writer.nullWriter());
  }

  @Override
  public void print(String message) {
    // Already reported, by the command itself or by Failures.
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
