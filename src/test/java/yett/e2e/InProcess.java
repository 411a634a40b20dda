package yett.e2e;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Map;
import yett.command.Shell;

/**
 * Runs the program in the process of the test, for scripts of many commands, because each would
 * otherwise need a process of its own. What depends on a process is tested on the packaged program.
 */
final class InProcess {
  private InProcess() {}

  /**
   * Runs a command to its end.
   *
   * @param environment added to {@link Programs#environment()}
   */
  static Pipe.Result run(Map<String, String> environment, String stdin, String... words) {
    return run(environment, Clock.systemUTC(), stdin, words);
  }

  /** The same with another clock. */
  static Pipe.Result run(
      Map<String, String> environment, Clock clock, String stdin, String... words) {
    return run(
        environment,
        clock,
        new ByteArrayInputStream(stdin.getBytes(StandardCharsets.UTF_8)),
        words);
  }

  /** The same with lines that arrive while the program runs. */
  static synchronized Pipe.Result run(
      Map<String, String> environment, Clock clock, InputStream stdin, String... words) {
    Map<String, String> all = Programs.environment();
    all.putAll(environment);
    InputStream in = System.in;
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream shown = new ByteArrayOutputStream();
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    try {
      System.setIn(stdin);
      System.setOut(new PrintStream(shown, true, StandardCharsets.UTF_8));
      System.setErr(new PrintStream(told, true, StandardCharsets.UTF_8));
      int status = Shell.run(all, clock, words);
      return new Pipe.Result(
          status, shown.toString(StandardCharsets.UTF_8), told.toString(StandardCharsets.UTF_8));
    } finally {
      System.setIn(in);
      System.setOut(out);
      System.setErr(err);
    }
  }
}
