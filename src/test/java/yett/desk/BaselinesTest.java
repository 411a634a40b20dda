package yett.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.NewEvent;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.event.Event.Earlier;
import yett.interview.event.EventText;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** What a gate read in order, and what begins that anew. */
class BaselinesTest {
  private static final String GATE = "Salt quay";

  @TempDir private Path directory;
  private Casebook casebook;

  @BeforeEach
  void commission() {
    casebook = Casebook.open(directory.resolve("casebook.db"));
    visit(
        "2024-03-04",
        Optional.of(InspectionKind.COMMISSIONING),
        List.of(
            read("chain-sag", "62 mm", 62),
            read("push-force", "70 N", 70),
            read("running-current", "4 A", 4),
            read("battery-running-voltage", "24.6 V", 24.6)),
        Ending.INSPECTED);
  }

  @AfterEach
  void close() {
    casebook.close();
  }

  private static Event read(String check, String typed, double value) {
    return new Event.Answered(check, new Answer.Read(typed, value));
  }

  private static Event done(String repair) {
    return new Event.Repaired(repair, true);
  }

  private void visit(
      String day, Optional<InspectionKind> inspection, List<Event> work, Ending ending) {
    Instant at = Instant.parse(day + "T09:00:00Z");
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened(GATE, Role.TECHNICIAN, "f", inspection, List.of()));
    events.add(new Event.SiteTaken());
    events.addAll(work);
    events.add(new Event.Closed(ending));
    CaseId id = casebook.newCase(GATE, at);
    casebook.append(
        id,
        0,
        events.stream()
            .map(
                e -> new NewEvent(at, Role.TECHNICIAN.word(), OpenCase.type(e), EventText.write(e)))
            .toArray(NewEvent[]::new));
  }

  private Map<String, Double> baselines() {
    return new Baselines(casebook, Shipped.QUICK)
        .of(GATE).stream()
            .filter(Earlier::baseline)
            .collect(Collectors.toMap(Earlier::check, Earlier::value));
  }

  @Test
  void what_is_read_after_a_repair_and_is_in_order_is_the_new_baseline_of_what_it_changed() {
    visit(
        "2025-03-04",
        Optional.empty(),
        List.of(
            read("chain-sag", "160 mm", 160),
            read("push-force", "75 N", 75),
            done("tighten-chain"),
            read("chain-sag", "70 mm", 70)),
        Ending.REPAIRED);
    assertThat(baselines())
        .containsEntry("chain-sag", 70.0)
        .containsEntry("push-force", 70.0)
        .containsEntry("battery-running-voltage", 24.6);
  }

  @Test
  void what_was_not_proved_or_is_out_of_order_begins_no_baseline() {
    visit(
        "2025-03-04",
        Optional.empty(),
        List.of(done("tighten-chain"), read("chain-sag", "70 mm", 70)),
        Ending.HANDED_OVER);
    assertThat(baselines()).doesNotContainKey("chain-sag");
    visit(
        "2025-03-05",
        Optional.empty(),
        List.of(
            read("chain-sag", "64 mm", 64),
            done("replace-chain"),
            read("chain-sag", "180 mm", 180)),
        Ending.REPAIRED);
    assertThat(baselines()).doesNotContainKey("chain-sag");
  }

  @Test
  void a_commissioning_that_failed_gives_the_baselines_once_a_case_proved_the_gate() {
    visit(
        "2025-03-04",
        Optional.of(InspectionKind.COMMISSIONING),
        List.of(read("chain-sag", "66 mm", 66), read("running-current", "4.2 A", 4.2)),
        Ending.OUT_OF_SERVICE);
    assertThat(baselines()).as("not proved yet").containsEntry("chain-sag", 62.0);
    Instant then = Instant.parse("2025-03-04T09:30:00Z");
    visit(
        "2025-03-05",
        Optional.empty(),
        List.of(
            new Event.Answered("chain-sag", new Answer.Read("66 mm", 66), Optional.of(then)),
            done("set-speed"),
            read("chain-sag", "66 mm", 66)),
        Ending.REPAIRED);
    assertThat(baselines())
        .as("set-speed changes the current")
        .containsEntry("chain-sag", 66.0)
        .doesNotContainKeys("running-current", "push-force");
    assertThat(
            new Baselines(casebook, Shipped.QUICK)
                .of(GATE).stream()
                    .filter(e -> e.check().equals("chain-sag") && e.baseline())
                    .map(Earlier::at))
        .containsExactly(Instant.parse("2025-03-04T09:00:00Z"));
  }

  @Test
  void what_a_case_took_over_from_an_inspection_is_not_read_twice() {
    Instant then = Instant.parse("2024-03-04T09:00:00Z");
    visit(
        "2025-03-05",
        Optional.empty(),
        List.of(new Event.Answered("chain-sag", new Answer.Read("62 mm", 62), Optional.of(then))),
        Ending.HANDED_OVER);
    assertThat(
            new Baselines(casebook, Shipped.QUICK)
                .of(GATE).stream().filter(e -> e.check().equals("chain-sag")).map(Earlier::at))
        .allMatch(then::equals);
  }

  @Test
  void new_batteries_end_what_the_old_ones_gave_and_leave_the_chain_alone() {
    visit("2025-03-04", Optional.empty(), List.of(done("replace-batteries")), Ending.REPAIRED);
    assertThat(baselines()).containsOnlyKeys("chain-sag", "push-force", "running-current");
  }

  /** By the thing that is changed: what reads it, and something that reads another thing. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          replace-chain         | chain-sag chain-length marker-gap sprocket-offset    | battery-rest-voltage
          tighten-chain         | chain-sag marker-gap                                 | chain-length
          renew-connecting-link | chain-sag                                            | battery-rest-voltage
          replace-idler         | chain-sag push-force running-current                 | battery-rest-voltage
          replace-sprocket      | chain-sag sprocket-offset end-gap                    | battery-rest-voltage
          replace-gearbox       | chain-sag sprocket-offset running-current end-gap    | battery-rest-voltage
          replace-motor         | running-current travel-time battery-running-voltage  | chain-sag
          fit-heavier-operator  | running-current chain-sag obstruction-force          | track-straightness
          replace-controller    | travel-time obstruction-force end-gap auto-close-time | chain-sag
          teach-limits          | travel-time end-gap                                  | push-force
          set-force             | obstruction-force                                    | chain-sag
          set-speed             | travel-time mid-travel-speed running-current         | chain-sag
          replace-batteries     | battery-rest-voltage battery-running-voltage charging-voltage battery-block-difference | push-force
          replace-charger       | charging-voltage battery-rest-voltage                | chain-sag
          set-charger           | charging-voltage                                     | running-current
          replace-supply-unit   | charging-voltage travel-time                         | push-force
          correct-supply-setting | selector-margin charging-voltage supply-under-load  | chain-sag
          improve-feeder        | supply-under-load mains-at-terminals                 | chain-sag
          improve-earth         | earth-resistance bond-resistance                     | chain-sag
          replace-wheel         | push-force running-current                           | battery-rest-voltage
          replace-cantilever-rollers | push-force running-current nose-drop            | chain-length
          level-track           | track-straightness push-force chain-sag              | battery-rest-voltage
          square-operator       | operator-square chain-sag marker-gap sprocket-offset | battery-rest-voltage
          replace-marker-sensor | marker-gap                                           | push-force
          renew-edge-battery    | edge-sender-battery                                  | chain-sag
          replace-panel         | panel-open-voltage charging-voltage                  | push-force
          """,
      delimiter = '|')
  void a_repair_begins_anew_what_reads_the_thing_that_it_changes(
      String repair, String changed, String not) {
    assertThat(Shipped.BASE.repairs()).containsKey(repair);
    for (String check : changed.split(" ")) {
      assertThat(Shipped.BASE.changes(repair, check)).as(check).isTrue();
    }
    assertThat(Shipped.BASE.checks()).containsKey(not);
    assertThat(Shipped.BASE.changes(repair, not)).as(not).isFalse();
  }
}
