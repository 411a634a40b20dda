package yett.e2e;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import com.pty4j.WinSize;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Runs a command on a pseudo-terminal of its own, and drives it as a person would: waits for words
 * to appear, then types. It needs no terminal on the machine that runs the test. Standard output
 * and standard error both appear on the screen.
 */
final class Pty implements AutoCloseable {
  /**
   * Escape sequences of ECMA-48 (control, string and two-character ones), including incomplete
   * ones.
   */
  private static final Pattern ESCAPES =
      Pattern.compile(
          "\u001b(?:\\[[0-?]*[ -/]*(?:[@-~]|$)"
              + "|[\\]PX^_][^\u0007\u001b]*(?:\u0007|\u001b\\\\|\u001b?$)"
              + "|[ -/]*(?:[0-~]|$))");

  private final PtyProcess process;
  private final StringBuilder output = new StringBuilder();
  private int seen;
  private boolean ended;

  private Pty(PtyProcess process) {
    this.process = process;
    Thread pump = new Thread(this::pump, "pty output");
    pump.setDaemon(true);
    pump.start();
  }

  /**
   * Starts a command.
   *
   * @param environment added to {@link Programs#environment()}
   */
  static Pty start(List<String> command, Map<String, String> environment, int columns, int rows) {
    Map<String, String> all = Programs.environment();
    all.putAll(environment);
    try {
      return new Pty(
          new PtyProcessBuilder(command.toArray(String[]::new))
              .setEnvironment(all)
              .setInitialColumns(columns)
              .setInitialRows(rows)
              .start());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Waits until the words appear after what was matched before. */
  Pty expect(String words, Duration patience) {
    return expect(Pattern.compile(Pattern.quote(words)), patience);
  }

  /**
   * Waits until the pattern matches after what was matched before.
   *
   * @throws AssertionError with the screen so far, if it does not appear in time
   */
  Pty expect(Pattern pattern, Duration patience) {
    readTo(pattern, patience);
    return this;
  }

  /**
   * As {@link #expect(Pattern, Duration)}.
   *
   * @return what appeared after what was matched before, up to the end of the match
   */
  synchronized String readTo(Pattern pattern, Duration patience) {
    long deadline = System.nanoTime() + patience.toNanos();
    while (true) {
      String screen = transcript();
      Matcher matcher = pattern.matcher(screen);
      if (matcher.find(Math.min(seen, screen.length()))) {
        String text = screen.substring(Math.min(seen, screen.length()), matcher.end());
        seen = matcher.end();
        return text;
      }
      long left = TimeUnit.NANOSECONDS.toMillis(deadline - System.nanoTime());
      if (ended || left <= 0) {
        throw new AssertionError(
            "%s while waiting for '%s'. The screen so far:%n%s%n(looked behind the first %d characters)"
                .formatted(
                    ended ? "The program ended" : "Nothing within " + patience,
                    pattern,
                    screen,
                    seen));
      }
      await(left);
    }
  }

  /** Sends characters as they are. */
  Pty type(String characters) {
    try {
      process.getOutputStream().write(characters.getBytes(StandardCharsets.UTF_8));
      process.getOutputStream().flush();
      return this;
    } catch (IOException e) {
      throw new AssertionError("Nobody reads the terminal. The screen so far:\n" + transcript(), e);
    }
  }

  /** Types a line and presses Enter. */
  Pty enter(String line) {
    return type(line + "\r");
  }

  Pty ctrlC() {
    return type("\u0003");
  }

  Pty ctrlD() {
    return type("\u0004");
  }

  void resize(int columns, int rows) {
    process.setWinSize(new WinSize(columns, rows));
  }

  /** Ends the program as a power cut would (SIGKILL): it gets no chance to tidy up. */
  void killHard() {
    ProcessHandle.of(process.pid()).ifPresent(ProcessHandle::destroyForcibly);
  }

  /**
   * Waits for the program to end.
   *
   * @return its exit code; 128 + n if signal n ended it
   */
  int waitForExit(Duration patience) {
    try {
      if (!process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new AssertionError(
            "Still running after %s. The screen so far:%n%s".formatted(patience, transcript()));
      }
      awaitEnd();
      return process.exitValue();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", e);
    }
  }

  /**
   * Everything that was shown, without escape sequences, and with lines ended by a line feed only.
   */
  String transcript() {
    return ESCAPES.matcher(raw()).replaceAll("").replaceAll("\r+\n", "\n");
  }

  /** Everything that was sent to the terminal. */
  synchronized String raw() {
    return output.toString();
  }

  @Override
  public void close() {
    killHard();
  }

  private void pump() {
    try (Reader reader = new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)) {
      char[] buffer = new char[1024];
      for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
        append(buffer, n);
      }
    } catch (IOException e) {
      // Linux reports the end of a pseudo-terminal as an input error.
    }
    end();
  }

  private synchronized void append(char[] buffer, int n) {
    output.append(buffer, 0, n);
    notifyAll();
  }

  private synchronized void end() {
    ended = true;
    notifyAll();
  }

  private synchronized void awaitEnd() {
    while (!ended) {
      await(TimeUnit.SECONDS.toMillis(1));
    }
  }

  private void await(long milliseconds) {
    try {
      wait(milliseconds);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", e);
    }
  }
}
