package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
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
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.testing.Shipped;
import yett.testing.Size;

/**
 * Tests inspections in which the program is killed at random, up to three times in each. Every
 * answer after which it had asked the next question must be stored once and complete; whoever goes
 * on is asked only for the rest and for the dangers; and in the end the sheet is that of an
 * inspection in peace. Two inspections in a normal run, forty in the long one.
 */
class KilledInspectionIT {
  private static final String GATE = "Net loft";
  private static final Pattern PROGRESS = Pattern.compile("(\\d+) of \\d+(?= inspected| *\\n)");

  @TempDir private static Path directory;

  private static final int MOST_KILLS = 3;

  /**
   * What is stored if nobody kills the program; the next fields are how many characters it shows
   * then, and the sheet.
   */
  private static List<Event> whole;

  private static int shown;

  private static String sheet;

  @BeforeAll
  static void inspectedInPeace() throws IOException {
    Path home = home("peace");
    Pipe.Result all = InProcess.run(env(home), lines(opened()), "inspect", GATE);
    assertThat(all.exitCode()).as(all.stdout() + all.stderr()).isZero();
    whole = made(stored(home));
    shown = all.stdout().length();
    sheet = sheet(home);
    assertThat(CaseState.of(stored(home)).closed()).contains(Ending.INSPECTED);
  }

  static LongStream seeds() {
    return Size.seeds(2, 40);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothing_that_was_answered_is_lost(long seed) throws Exception {
    Random random = new Random(seed);
    Path home = home("killed-" + seed);
    int kills = 1 + random.nextInt(MOST_KILLS);
    for (int kill = 0; kill < kills; kill++) {
      Way way = Way.of(stored(home), random);
      String seen = killed(home, way, random.nextInt(shown));

      List<Event> left = made(stored(home));
      assertThat(left)
          .as("what is stored is what was entered, in its order")
          .isEqualTo(whole.subList(0, left.size()));
      assertThat(left.stream().filter(Event.Answered.class::isInstance).count())
          .as("what the screen had moved on from")
          .isGreaterThanOrEqualTo(told(seen));
    }
    Way way = Way.of(stored(home), random);
    Pipe.Result resumed = InProcess.run(env(home), way.script(), way.words());
    assertThat(resumed.exitCode()).as(resumed.stdout() + resumed.stderr()).isZero();
    assertThat(made(stored(home))).as("resumed, it comes to the same").isEqualTo(whole);
    assertThat(sheet(home)).isEqualTo(sheet);
    Pipe.Result verified = InProcess.run(env(home), "", "cases", "verify");
    assertThat(verified.exitCode()).as(verified.stdout()).isZero();
  }

  /**
   * How somebody goes on at the gate.
   *
   * @param words the command
   * @param script everything that is typed, to the end of the inspection
   */
  private record Way(String[] words, String script) {
    static Way of(List<Entry> left, Random random) {
      if (left.isEmpty()) { // killed before there was a case
        return new Way(new String[] {"inspect", GATE}, lines(opened()));
      }
      boolean closed = CaseState.of(left).closed().isPresent();
      boolean inForce = !CaseState.of(left).work().setUps().isEmpty();
      String stays = inForce ? "yes\n" : ""; // nobody went away
      List<Entry> all = left.size() == 1 ? opened() : left;
      if (closed || random.nextBoolean()) {
        return new Way(new String[] {"resume", "1"}, stays + lines(all));
      }
      List<Entry> looksAgain = new ArrayList<>(all);
      looksAgain.add(
          new Entry(all.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, new Event.DangersAgain()));
      return new Way(new String[] {"inspect", GATE}, "1\n" + stays + lines(looksAgain));
    }
  }

  /** Runs the program until it has shown this many characters, and kills it. */
  private static String killed(Path home, Way way, int after) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(Programs.packaged(way.words()));
    builder.environment().clear();
    builder.environment().putAll(Programs.environment());
    builder.environment().putAll(env(home));
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.start();
    try (OutputStream in = process.getOutputStream();
        InputStream out = process.getInputStream()) {
      in.write(way.script().getBytes(StandardCharsets.UTF_8));
      in.flush();
      byte[] seen = out.readNBytes(after);
      process.toHandle().descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly().waitFor();
      return new String(seen, StandardCharsets.UTF_8);
    }
  }

  private static String sheet(Path home) {
    Pipe.Result sheet = InProcess.run(env(home), "", "record", "1");
    assertThat(sheet.exitCode()).as(sheet.stderr()).isZero();
    return sheet.stdout();
  }

  private static int told(String seen) {
    Matcher progress = PROGRESS.matcher(seen);
    int most = 0;
    while (progress.find()) {
      most = Math.max(most, Integer.parseInt(progress.group(1)));
    }
    return most;
  }

  private static String lines(List<Entry> entries) {
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

  /** The events without the looks for dangers, which come again with everybody who comes back. */
  private static List<Event> made(List<Entry> entries) {
    return entries.stream()
        .map(Entry::event)
        .filter(e -> !(e instanceof Event.DangersAgain || e instanceof Event.Returned))
        .filter(
            e -> !(e instanceof Event.Answered a && Shipped.BASE.checks().get(a.check()).danger()))
        .toList();
  }
}
