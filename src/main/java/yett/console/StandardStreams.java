package yett.console;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The two standard streams. They and the {@link Console} are the program's only output. Text from
 * cards, files or callers is cleaned here, so that it cannot control a terminal.
 */
public final class StandardStreams {
  /** The bits of a Unix file mode that tell a pipe. */
  private static final int FILE_TYPE = 0170000;

  private static final int PIPE = 0010000;

  private static PrintStream ownOut;
  private static PrintStream ownErr;

  private final PrintStream out;
  private final PrintStream err;

  /**
   * Columns of the screen on which messages are read; unlimited if nobody reads them on a screen.
   */
  private IntSupplier width = () -> Integer.MAX_VALUE;

  StandardStreams(PrintStream out, PrintStream err) {
    this.out = new PrintStream(out, true, StandardCharsets.UTF_8);
    this.err = new PrintStream(err, true, StandardCharsets.UTF_8);
  }

  public static StandardStreams standard() {
    return new StandardStreams(out(), err());
  }

  /**
   * Reserves the standard streams for the program's own output, for the whole run. Output of
   * libraries would be neither cleaned nor understood at a gate.
   *
   * @param strangers receives each line that other code prints
   */
  public static synchronized void keepForOwnWords(Consumer<String> strangers) {
    ownOut = System.out;
    ownErr = System.err;
    System.setOut(new PrintStream(new LinesTo(strangers), true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(new LinesTo(strangers), true, StandardCharsets.UTF_8));
  }

  static synchronized PrintStream out() {
    return ownOut == null ? System.out : ownOut;
  }

  static synchronized PrintStream err() {
    return ownErr == null ? System.err : ownErr;
  }

  /**
   * Prints text that is already laid out, such as Markdown, on standard output; one line or
   * several.
   */
  public void print(String text) {
    out.println(cleaned(text));
  }

  /**
   * Prints JSON on standard output. Nothing is removed: characters that could control a terminal
   * are written as JSON escapes, which any reader of JSON decodes.
   *
   * @param json one value or several, each on lines of its own
   */
  public void json(String json) {
    if (!json.isEmpty()) {
      out.println(escaped(json.stripTrailing()));
    }
  }

  /** From now on, breaks messages between words for a screen of this width. */
  public void fold(IntSupplier columns) {
    width = columns;
  }

  /** Prints a message on standard error, which keeps piped output clean; one line or several. */
  public void tell(String message) {
    int columns = width.getAsInt();
    Stream.of(cleaned(message).split("\n", -1))
        .flatMap(
            line ->
                Wrapping.columns(line) <= columns
                    ? Stream.of(line)
                    : Wrapping.folded(line, columns).stream())
        .forEach(err::println);
  }

  /** Whether some standard output was lost because of a full disk or a closed pipe. */
  public boolean lost() {
    return out.checkError();
  }

  /**
   * Whether standard output goes to another program. If some of it was lost then, that program has
   * read what it wanted, as {@code head} does. Asked of the system, because the message of a write
   * that failed is in the language of the computer.
   */
  public static boolean feedsProgram() {
    try {
      int mode = (int) Files.getAttribute(Path.of("/dev/stdout"), "unix:mode");
      return (mode & FILE_TYPE) == PIPE;
    } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
      return false; // not a Unix
    }
  }

  private static String cleaned(String text) {
    return text.lines().map(Characters::forScreen).collect(Collectors.joining("\n"));
  }

  private static String escaped(String json) {
    StringBuilder text = new StringBuilder(json.length());
    for (int c : json.codePoints().toArray()) {
      if (c == '\n' || !Characters.steers(c)) {
        text.appendCodePoint(c);
      } else {
        for (char half : Character.toChars(c)) {
          text.append("\\u%04x".formatted((int) half));
        }
      }
    }
    return text.toString();
  }
}
