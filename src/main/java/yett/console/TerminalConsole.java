package yett.console;

import java.io.IOError;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jline.reader.Candidate;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;

/**
 * A console on a terminal, with line editing. The arrow keys bring back earlier answers; they are
 * kept in memory only, because an answer may contain a person's name.
 */
public final class TerminalConsole implements Console {
  private final Terminal terminal;
  private final PrintStream err;
  private final boolean colour;
  private final LineReader reader;
  private List<String> completions = List.of();
  private LineReader commandReader;

  /**
   * @param err where progress is shown: that terminal, or nowhere
   */
  public TerminalConsole(Terminal terminal, PrintStream err, boolean colour) {
    this.terminal = terminal;
    this.err = err;
    this.colour = colour;
    if (terminal.getWidth() <= 0 || terminal.getHeight() <= 0) {
      // Serial lines and some containers do not report a size, and JLine cannot draw a prompt in no
      // space.
      terminal.setSize(new Size(Layout.USUAL, Layout.USUAL_ROWS));
    }
    this.reader =
        reader(
            (r, line, candidates) ->
                offered(line.line().substring(0, line.cursor()), completions).stream()
                    .map(Candidate::new)
                    .forEach(candidates::add));
  }

  private LineReader reader(org.jline.reader.Completer completer) {
    return LineReaderBuilder.builder()
        .terminal(terminal)
        .parser((line, cursor, context) -> new WholeLine(line, cursor))
        .completer(completer)
        // An answer is taken as typed: "!" and "\\" have no meaning.
        .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
        // A plain list below the prompt, because JLine would draw the menu in its own colours.
        .option(LineReader.Option.AUTO_MENU, false)
        .variable(LineReader.COMPLETION_STYLE_STARTING, "")
        .variable(LineReader.COMPLETION_STYLE_LIST_STARTING, "")
        .variable(LineReader.BELL_STYLE, "none")
        .build();
  }

  /**
   * The answers that Tab offers: whole answers and, after a comma, each of them as the next part of
   * a list. Answers that continue another one, as "ask chain-sag" continues "ask", are offered only
   * once that is typed, because they may be many.
   */
  static List<String> offered(String typed, List<String> cards) {
    List<String> all = cards.stream().map(Characters::forScreen).toList();
    Set<String> whole = Set.copyOf(all);
    List<String> answers =
        all.stream()
            .filter(a -> typed.startsWith(first(a) + " ") || !whole.contains(first(a)))
            .toList();
    int comma = typed.lastIndexOf(',');
    if (comma < 0) {
      return answers;
    }
    String before = typed.substring(0, comma + 1);
    String part = typed.substring(comma + 1);
    String blanks = part.substring(0, part.length() - part.stripLeading().length());
    return Stream.concat(answers.stream(), answers.stream().map(a -> before + blanks + a)).toList();
  }

  /** The first word of an answer of several words; empty for an answer of one. */
  private static String first(String answer) {
    return answer.contains(" ") ? answer.substring(0, answer.indexOf(' ')) : "";
  }

  @Override
  public int width() {
    return layout().width();
  }

  @Override
  public int height() {
    int lines = terminal.getHeight();
    return lines > 0 ? lines : Integer.MAX_VALUE;
  }

  @Override
  public int lines(List<Block> blocks) {
    return (int) Renderer.render(blocks, layout()).lines().count();
  }

  private Layout layout() {
    boolean unicode = terminal.outputEncoding().equals(StandardCharsets.UTF_8);
    return new Layout(terminal.getWidth(), colour, unicode);
  }

  @Override
  public void show(List<Block> blocks) {
    terminal.writer().print(Renderer.render(blocks, layout()));
    terminal.flush();
  }

  @Override
  public Reply ask(String prompt, List<String> completions) {
    this.completions = completions;
    return read(reader, prompt);
  }

  /**
   * Uses a reader of its own, because what is answered between commands is no command and belongs
   * in no history.
   */
  @Override
  public Reply askCommand(String prompt, Completer completer, CommandHistory history) {
    if (commandReader == null) {
      commandReader =
          reader(
              (r, line, candidates) ->
                  completer.after(line.line().substring(0, line.cursor())).stream()
                      .map(TerminalConsole::candidate)
                      .forEach(candidates::add));
      history.lines().forEach(commandReader.getHistory()::add);
    }
    return read(commandReader, prompt);
  }

  private static Candidate candidate(Completer.Completion completion) {
    return new Candidate(
        Characters.forScreen(completion.line()),
        Characters.forScreen(completion.shown()),
        null,
        null,
        null,
        null,
        completion.whole());
  }

  /** In a prompt JLine takes a percent sign for the beginning of an instruction. */
  private static String literal(String prompt) {
    return prompt.replace("%", "%%");
  }

  private Reply read(LineReader from, String prompt) {
    while (true) {
      Cleaned line;
      try {
        line = Cleaned.of(from.readLine(literal(Renderer.prompt(prompt, layout()))));
      } catch (UserInterruptException e) {
        return new Reply.Interrupted();
      } catch (EndOfFileException | IOError e) {
        // JLine throws IOError if the terminal has gone away.
        return new Reply.EndOfInput();
      }
      if (line.refusal().isEmpty()) {
        return new Reply.Line(line.text());
      }
      show(Block.paragraph(line.refusal().get()));
    }
  }

  @Override
  public boolean interactive() {
    return true;
  }

  @Override
  public Progress start(String what, int total) {
    return new LineProgress(err, Renderer.inline(what, layout()), total, width());
  }

  /**
   * The line as one word, so that "cannot tell" can be completed and a single quote needs no
   * partner.
   */
  private record WholeLine(String line, int cursor) implements CompletingParsedLine {
    @Override
    public String word() {
      return line;
    }

    @Override
    public int wordCursor() {
      return cursor;
    }

    @Override
    public int wordIndex() {
      return 0;
    }

    @Override
    public List<String> words() {
      return List.of(line);
    }

    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
      return candidate;
    }

    @Override
    public int rawWordCursor() {
      return cursor;
    }

    @Override
    public int rawWordLength() {
      return line.length();
    }
  }
}
