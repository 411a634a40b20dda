package yett.casebook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A second program on the same casebook. It tells on its standard output, a line each, what the
 * casebook has told it is done.
 */
final class Writer {
  static final Instant AT = Instant.parse("2026-11-25T09:30:00.123456789Z");

  private static final String TOLD = "told ";
  private static final String READY = "ready";

  private Writer() {}

  /** In a JVM of its own; what it writes to standard error goes to ours. */
  static Process start(String casebook, String task, String... more) throws IOException {
    var command =
        new ArrayList<String>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", // a short run
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Writer.class.getName(),
                casebook,
                task));
    command.addAll(List.of(more));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  /** What a line of the other program's output tells; empty for a line of its log. */
  static Stream<String> told(String line) {
    return line.startsWith(TOLD) && line.length() > TOLD.length()
        ? Stream.of(line.substring(TOLD.length()))
        : Stream.empty();
  }

  static NewEvent event(String by, int n) {
    return new NewEvent(AT, by, "answered", "{\"n\":" + n + "}");
  }

  /** Appends after whatever stands there already, as often as others come first. */
  static long appendAfterOthers(Casebook casebook, CaseId id, long known, NewEvent event) {
    try {
      casebook.append(id, known, event);
      return known + 1;
    } catch (CaseMovedOn e) {
      return appendAfterOthers(casebook, id, known + e.newer().size(), event);
    }
  }

  /** Waits until all of them stand ready, then lets them go at once. */
  static void startAtOnce(List<Process> waiting) throws IOException {
    for (Process child : waiting) {
      String line = child.inputReader(StandardCharsets.US_ASCII).readLine();
      if (!(TOLD + READY).equals(line)) {
        throw new IOException("the other program said \"" + line + "\" instead of being ready");
      }
    }
    for (Process child : waiting) {
      child.getOutputStream().close();
    }
  }

  public static void main(String[] args) throws IOException {
    if (args[1].equals("open-cases")) {
      tell(READY);
      System.in.read();
    }
    var casebook = Store.open(args[0]);
    switch (args[1]) {
      case "append-for-ever" -> appendForEver(casebook, args[2]);
      case "append-among-others" -> {
        appendAmongOthers(casebook, args[2], args[3], Integer.parseInt(args[4]));
        tell("done");
      }
      case "open-cases" -> openCases(casebook, Integer.parseInt(args[2]));
      default -> throw new IllegalArgumentException(args[1]);
    }
    casebook.close();
  }

  private static void appendForEver(Casebook casebook, String id) {
    for (int n = 0; ; n++) {
      casebook.append(casebook.find(id), n, event("child", n));
      tell(n + 1);
    }
  }

  static void appendAmongOthers(Casebook casebook, String id, String by, int count) {
    long known = 0;
    for (int n = 0; n < count; n++) {
      known = appendAfterOthers(casebook, casebook.find(id), known, event(by, n));
    }
  }

  private static void openCases(Casebook casebook, int count) {
    for (int n = 0; n < count; n++) {
      tell(casebook.newCase("harrow-quay-3", AT));
    }
  }

  private static void tell(Object done) {
    System.out.println(TOLD + done);
    System.out.flush();
  }
}
