package yett.console;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The two standard streams. With the {@link Console}, the only way out of the program: whatever a
 * card, a file or a caller wrote is cleaned here, so that it can steer no terminal.
 */
public final class StandardStreams {
  private static PrintStream ownOut;
  private static PrintStream ownErr;

  private final PrintStream out;
  private final PrintStream err;

  /** Columns of the screen on which messages are read; none where nobody reads them at once. */
  private IntSupplier width = () -> Integer.MAX_VALUE;

  StandardStreams(PrintStream out, PrintStream err) {
    this.out = new PrintStream(out, true, StandardCharsets.UTF_8);
    this.err = new PrintStream(err, true, StandardCharsets.UTF_8);
  }

  public static StandardStreams standard() {
    return new StandardStreams(out(), err());
  }

  /**
   * Keeps the standard streams for the program's own words from here on, once for a whole run. What
   * libraries print would be neither cleaned nor understood at a gate.
   *
   * @param strangers is given each line that somebody else prints
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

  /** Text that is laid out already, such as Markdown, on standard output; one line or several. */
  public void print(String text) {
    out.println(cleaned(text));
  }

  /**
   * JSON on standard output. Nothing is taken away: what could steer a terminal stands in JSON's
   * own escapes, and any reader of JSON gets it back.
   *
   * @param json one value or several, each on lines of its own
   */
  public void json(String json) {
    if (!json.isEmpty()) {
      out.println(escaped(json.stripTrailing()));
    }
  }

  /** Breaks messages between words from here on, where they are read on a screen so wide. */
  public void fold(IntSupplier columns) {
    width = columns;
  }

  /** A message on standard error, so that output can be piped; one line or several. */
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

  /** Whether something for standard output did not get there: a full disk, a closed pipe. */
  public boolean lost() {
    return out.checkError();
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
