package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.desk.OpenCase;
import yett.files.OwnFiles;
import yett.interview.CaseState;
import yett.interview.Ending;
import yett.interview.Entry;
import yett.interview.Event;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.testing.Shipped;
import yett.testing.Size;

/**
 * Tests inspections in which the program is killed at random. Every answer after which it had asked
 * the next question must be stored once and complete, and after resuming only the rest may be
 * asked. Two kills in a normal run, forty in the long one.
 */
class KilledInspectionIT {
  private static final String GATE = "Net loft";
  private static final Pattern PROGRESS = Pattern.compile("(\\d+) of \\d+(?= inspected| *\\n)");

  @TempDir private static Path directory;

  /**
   * The events that are stored if nobody kills the program; the next field is how many characters
   * it shows then.
   */
  private static List<Event> whole;

  private static int shown;

  @BeforeAll
  static void inspectedInPeace() throws IOException {
    Path home = home("peace");
    Pipe.Result all = InProcess.run(env(home), script(opened()), "inspect", GATE);
    assertThat(all.exitCode()).as(all.stdout() + all.stderr()).isZero();
    whole = events(home);
    shown = all.stdout().length();
    assertThat(CaseState.of(stored(home)).closed()).contains(Ending.INSPECTED);
  }

  static LongStream seeds() {
    return Size.seeds(2, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothing_that_was_answered_is_lost(long seed) throws Exception {
    Path home = home("killed-" + seed);
    String seen = killed(home, new Random(seed).nextInt(shown));

    List<Entry> left = stored(home);
    assertThat(left.stream().map(Entry::event).map(KilledInspectionIT::words).toList())
        .as("what is stored is what was entered, in its order")
        .isEqualTo(whole.subList(0, left.size()).stream().map(KilledInspectionIT::words).toList());
    long answered = left.stream().filter(e -> e.event() instanceof Event.Answered).count();
    assertThat(answered).as("what the screen had moved on from").isGreaterThanOrEqualTo(told(seen));

    if (left.isEmpty()) {
      return; // killed before there was a case
    }
    String rest = script(left.size() == 1 ? opened() : left);
    boolean inForce = !CaseState.of(left).work().setUps().isEmpty();
    String asked = inForce ? "yes\n" : ""; // nobody went away
    Pipe.Result resumed = InProcess.run(env(home), asked + rest, "resume", "1");
    assertThat(resumed.exitCode()).as(resumed.stdout() + resumed.stderr()).isZero();
    assertThat(events(home).stream().map(KilledInspectionIT::words).toList())
        .as("resumed, it comes to the same")
        .isEqualTo(whole.stream().map(KilledInspectionIT::words).toList());
    Pipe.Result verified = InProcess.run(env(home), "", "cases", "verify");
    assertThat(verified.exitCode()).as(verified.stdout()).isZero();
  }

  /** Runs the program until it has shown this many characters, and kills it. */
  private static String killed(Path home, int after) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(Programs.packaged("inspect", GATE));
    builder.environment().clear();
    builder.environment().putAll(Programs.environment());
    builder.environment().putAll(env(home));
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.start();
    try (OutputStream in = process.getOutputStream();
        InputStream out = process.getInputStream()) {
      in.write(script(opened()).getBytes(StandardCharsets.UTF_8));
      in.flush();
      byte[] seen = out.readNBytes(after);
      process.toHandle().descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly().waitFor();
      return new String(seen, StandardCharsets.UTF_8);
    }
  }

  private static int told(String seen) {
    Matcher progress = PROGRESS.matcher(seen);
    int most = 0;
    while (progress.find()) {
      most = Math.max(most, Integer.parseInt(progress.group(1)));
    }
    return most;
  }

  private static String script(List<Entry> entries) {
    return String.join("\n", OrdinaryGate.lines(entries)) + "\n";
  }

  private static List<Entry> opened() {
    return List.of(
        new Entry(
            1,
            Instant.EPOCH,
            Role.TECHNICIAN,
            new Event.Opened(
                GATE,
                Role.TECHNICIAN,
                Shipped.BASE.fingerprint(),
                Optional.of(InspectionKind.SERVICE),
                List.of())));
  }

  private static Path home(String name) throws IOException {
    Path home = directory.resolve(name);
    OwnFiles.folder(home);
    return home;
  }

  private static Map<String, String> env(Path home) {
    return Map.of("YETT_HOME", home.toString());
  }

  private static List<Entry> stored(Path home) {
    if (!Files.exists(home.resolve("casebook.db"))) {
      return List.of();
    }
    try (Casebook casebook = Casebook.open(home.resolve("casebook.db"))) {
      List<CaseSummary> cases = casebook.cases();
      assertThat(cases).hasSizeLessThan(2);
      return cases.isEmpty() ? List.of() : OpenCase.entries(casebook.events(cases.get(0).id()));
    }
  }

  private static List<Event> events(Path home) {
    return stored(home).stream().map(Entry::event).toList();
  }

  private static String words(Event event) {
    return event.toString();
  }
}
