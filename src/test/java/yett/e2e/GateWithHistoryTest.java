package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.desk.OpenCase;
import yett.interview.course.Interview;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.testing.Shipped;

/**
 * Tests the whole life of one gate: commissioned, serviced after a year, faulty, diagnosed by its
 * baseline, repaired, and the paper handed out. It also tests the same for a gate that was imported
 * from a sheet.
 */
class GateWithHistoryTest {
  private static final String GATE = "Rope walk";
  private static final String MOUNTED = "2024-04-08";
  private static final String SERVICED = "2025-04-14";
  private static final String BROKEN = "2025-09-02";

  /** The sag at commissioning was 52 mm; the usual range for such a gate is 45 mm to 90 mm. */
  private static final Map<String, String> IN_ORDER = Map.of("chain-sag", "52 mm");

  private static final String HANGS = "84 mm";
  private static final String CASE = "2025-0002";

  @TempDir private Path directory;

  private static Pipe.Result on(String day, Path home, String stdin, String... words) {
    Clock clock = Clock.fixed(Instant.parse(day + "T09:00:00Z"), ZoneOffset.UTC);
    Pipe.Result result = InProcess.run(Map.of("YETT_HOME", home.toString()), clock, stdin, words);
    assertThat(result.exitCode()).as(result.stdout() + result.stderr()).isZero();
    return result;
  }

  @Test
  void a_gate_is_mounted_serviced_broken_found_by_its_baseline_and_the_paper_handed_out()
      throws IOException {
    Path home = directory.resolve("van");
    inspect(home, MOUNTED, InspectionKind.COMMISSIONING);
    assertThat(on(MOUNTED, home, "", "gates", "show", GATE).stdout())
        .contains("Baseline: 52 mm on " + MOUNTED);

    String service = inspect(home, SERVICED, InspectionKind.SERVICE);
    assertThat(service).contains("52 mm on " + MOUNTED);
    assertThat(on(SERVICED, home, "", "gates", "due").stdout()).contains(GATE, "2026-04-14");

    Path gates = directory.resolve("gates.csv");
    Path readings = directory.resolve("readings.csv");
    on(SERVICED, home, "", "gates", "export", gates.toString());
    on(SERVICED, home, "", "gates", "readings", "export", readings.toString());

    on(BROKEN, home, "", "diagnose", GATE);
    List<String> typed = OrdinaryGate.lines(entries(home), story(), IN_ORDER, Shipped.EXPERTISE);
    on(BROKEN, home, String.join("\n", typed) + "\n", "resume", CASE);
    assertFoundByItsBaseline(home);

    Path office = directory.resolve("office");
    on(BROKEN, office, "", "gates", "import", gates.toString());
    on(BROKEN, office, "", "gates", "readings", "import", readings.toString());
    on(BROKEN, office, String.join("\n", typed) + "\n", "diagnose", GATE);
    assertFoundByItsBaseline(office);
  }

  @Test
  void whoever_comes_for_a_fault_is_told_what_the_last_inspection_remarked() {
    Path home = directory.resolve("van");
    inspect(home, SERVICED, InspectionKind.SERVICE, Map.of("chain-sag", "130 mm"));
    assertThat(on(BROKEN, home, "", "diagnose", GATE).stdout())
        .contains("Left since the last inspection", SERVICED + ", remark: Chain sag, 130 mm");
  }

  private String inspect(Path home, String day, InspectionKind kind) {
    return inspect(home, day, kind, IN_ORDER);
  }

  private String inspect(Path home, String day, InspectionKind kind, Map<String, String> answers) {
    List<Entry> opened =
        List.of(
            new Entry(
                1,
                Instant.EPOCH,
                Role.TECHNICIAN,
                new Event.Opened(
                    GATE,
                    Role.TECHNICIAN,
                    Shipped.BASE.fingerprint(),
                    Optional.of(kind),
                    List.of())));
    String typed = String.join("\n", OrdinaryGate.lines(opened, answers)) + "\n";
    return on(day, home, typed, "inspect", GATE, "--for", kind.word()).stdout();
  }

  /**
   * Asserts that the chain was judged by its baseline. It sags far more than it did, but not more
   * than is usual on such gates.
   */
  private void assertFoundByItsBaseline(Path home) throws IOException {
    List<Entry> all = entries(home);
    CaseState state = CaseState.of(all);
    assertThat(state.closed()).as(all.toString()).contains(Ending.REPAIRED);
    assertThat(state.work().deeds())
        .extracting(Entry::event)
        .filteredOn(Event.Repaired.class::isInstance)
        .first()
        .isEqualTo(new Event.Repaired("tighten-chain", true));
    assertThat(outcome(all)).isEqualTo("slack");
    assertThat(outcome(withoutHistory(all))).isEqualTo("ordinary");

    Path pdf = directory.resolve(home.getFileName() + ".pdf");
    Path html = directory.resolve(home.getFileName() + ".html");
    on(
        BROKEN,
        home,
        "",
        "record",
        CASE,
        "--pdf",
        pdf.toString(),
        "--html",
        html.toString(),
        "--log");
    assertThat(
            Files.readString(html).contains("52 mm on " + MOUNTED + ", when the gate was in order"))
        .as("the log says by what it was judged")
        .isTrue();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      String words =
          new PDFTextStripper().getText(document).replace('\u00a0', ' ').replaceAll("\\s+", " ");
      assertThat(words).contains("Chain too slack", HANGS, "52 mm", "The gate is back in use");
      assertThat(words)
          .as("84 mm are slack by the range as found, not by the one after the repair")
          .contains("36 mm to 68 mm as found; now 45 mm to 90 mm");
    }
  }

  private static Story story() {
    Story written = Story.of("slack-chain-after-winter");
    Map<String, String> answers = new HashMap<>(written.answers());
    answers.put("chain-sag", HANGS);
    answers.remove("chain-hand-lift");
    return new Story(List.of("noisy-chain"), List.of(), answers, true, written.repairs());
  }

  private static String outcome(List<Entry> entries) {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      return interview.judgement(entries).findings().stream()
          .filter(f -> f.check().equals("chain-sag") && f.event() > 0)
          .findFirst()
          .orElseThrow()
          .outcome();
    }
  }

  /**
   * The same entries without the readings of earlier visits. Only the judgement before the first
   * repair can be compared, because the repair changes what is usual.
   */
  private static List<Entry> withoutHistory(List<Entry> all) {
    Entry first = all.get(0);
    Event opened = new Event.Opened(GATE, Role.TECHNICIAN, Shipped.BASE.fingerprint());
    List<Entry> others = new ArrayList<>(all);
    others.set(0, new Entry(first.number(), first.at(), first.by(), opened));
    return others;
  }

  /** The entries of the case that was begun last. */
  private static List<Entry> entries(Path home) {
    try (Casebook casebook = Casebook.open(home.resolve("casebook.db"))) {
      CaseId last =
          casebook.cases().stream().max(Comparator.comparing(c -> c.opened())).orElseThrow().id();
      return OpenCase.entries(casebook.events(last));
    }
  }
}
