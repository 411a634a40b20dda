package yett.console;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jline.nativ.OSInfo;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.TerminalBuilder.SystemOutput;
import org.jline.terminal.impl.ExternalTerminal;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalExt;
import yett.files.NativeLibrary;

/** Chooses the console that suits the place where the program runs. */
public final class Consoles {
  private static final String ANY_TYPE_BUT_DUMB = "ansi";

  private Consoles() {}

  /**
   * The native part of the terminal library. Call {@code share} on it before a console is chosen.
   */
  public static NativeLibrary nativeLibrary() {
    return new NativeLibrary(
        "library.jline.path",
        "/org/jline/nativ/" + OSInfo.getNativeLibFolderPathForCurrentOS(),
        System.mapLibraryName("jlinenative"));
  }

  /**
   * A console on the standard streams: with line editing if a person sits at a terminal that is not
   * dumb, otherwise plain. Call it once.
   *
   * @param environment its TERM, NO_COLOR and COLUMNS are used
   */
  public static Console choose(Map<String, String> environment) {
    Optional<Terminal> terminal = systemTerminal(isDumb(environment));
    if (terminal.isPresent() && !isDumb(environment)) {
      return on(terminal.get(), environment);
    }
    boolean watched = terminal.map(Consoles::showsErrors).orElse(false);
    terminal.ifPresent(Consoles::close);
    return plain(environment, terminal.isPresent(), watched);
  }

  /** A console on a real terminal that is already open. */
  public static Console on(Terminal terminal, Map<String, String> environment) {
    return new TerminalConsole(terminal, progress(showsErrors(terminal)), hasColour(environment));
  }

  /** Edits a line on a simulated terminal, so that the classes needed for it are loaded. */
  public static void rehearse() throws IOException {
    InputStream typed = new ByteArrayInputStream("sa\t\r".getBytes(StandardCharsets.UTF_8));
    try (Terminal nowhere =
        new ExternalTerminal(
            "nowhere",
            ANY_TYPE_BUT_DUMB,
            typed,
            OutputStream.nullOutputStream(),
            StandardCharsets.UTF_8)) {
      on(nowhere, Map.of()).ask("> ", List.of("save"));
    }
  }

  /** Whether standard error goes to the terminal as well. */
  private static boolean showsErrors(Terminal terminal) {
    return terminal instanceof TerminalExt real
        && real.getProvider() != null
        && real.getProvider().isSystemStream(SystemStream.Error);
  }

  /**
   * Where progress is shown, cleared of the starting program's. It is for somebody who is waiting;
   * a log or a pipe gets only the result.
   */
  private static PrintStream progress(boolean watched) {
    PrintStream progress =
        watched ? utf8(StandardStreams.err()) : new PrintStream(OutputStream.nullOutputStream());
    progress.print(Starting.cleared());
    progress.flush();
    return progress;
  }

  /** Whether a terminal with this environment may be sent colours (see no-color.org). */
  static boolean hasColour(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty() && !isDumb(environment);
  }

  private static boolean isDumb(Map<String, String> environment) {
    return environment.getOrDefault("TERM", "").startsWith("dumb");
  }

  /**
   * The terminal, if both standard input and standard output are one. A dumb type is not passed on:
   * JLine would return a substitute without checking.
   */
  private static Optional<Terminal> systemTerminal(boolean dumb) {
    if (!atTerminal()) {
      return Optional.empty();
    }
    TerminalBuilder builder =
        TerminalBuilder.builder().system(true).dumb(false).systemOutput(SystemOutput.SysOut);
    if (dumb) {
      builder.type(ANY_TYPE_BUT_DUMB);
    }
    try {
      return Optional.of(builder.build());
    } catch (IOException | IllegalStateException e) {
      return Optional.empty();
    }
  }

  /**
   * Whether both standard input and standard output are a terminal. Java can tell faster than
   * JLine, which would start another program to find out.
   */
  public static boolean atTerminal() {
    // Newer JDKs would otherwise start a line editor of their own, even without a terminal.
    System.setProperty("jdk.console", "java.base");
    return System.console() != null;
  }

  private static void close(Terminal terminal) {
    try {
      terminal.close();
    } catch (IOException e) {
      // Closing only restores settings, and none were changed yet.
    }
  }

  private static Console plain(
      Map<String, String> environment, boolean interactive, boolean watched) {
    Layout layout = new Layout(columns(environment), false, isUtf8());
    return new PlainConsole(
        System.in, utf8(StandardStreams.out()), progress(watched), layout, interactive);
  }

  private static int columns(Map<String, String> environment) {
    String columns = environment.getOrDefault("COLUMNS", "");
    return columns.matches("[1-9]\\d{0,3}") ? Integer.parseInt(columns) : Layout.USUAL;
  }

  /** Whether the machine's own character set is UTF-8; JDK 17 does not tell that of a pipe. */
  private static boolean isUtf8() {
    String name = System.getProperty("stdout.encoding", System.getProperty("native.encoding", ""));
    return name.equalsIgnoreCase(StandardCharsets.UTF_8.name());
  }

  private static PrintStream utf8(PrintStream stream) {
    return new PrintStream(stream, true, StandardCharsets.UTF_8);
  }
}
