package yett.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.core.type.TypeReference;
import tools.jackson.dataformat.yaml.YAMLMapper;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.replay.CaseFile;
import yett.replay.Replayer;
import yett.replay.SmallRuleBase;

/**
 * Every folder in {@code records/} is a test: a case file or a list of events, and what is to be
 * written from it. What was written instead stands in {@code target/records/}.
 */
class RecordsTest {
  private static final Path RECORDS = Path.of("src/test/resources/records");
  private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");

  static Stream<String> folders() throws IOException {
    try (Stream<Path> inside = Files.list(RECORDS)) {
      return inside.map(p -> p.getFileName().toString()).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("folders")
  void the_record_is_the_expected_one(String name) throws IOException {
    CaseRecord record = new CaseRecord(SmallRuleBase.base());
    compare(name, "record.md", record.markdown(moment(name), name, "Net loft gate"));
  }

  @ParameterizedTest
  @MethodSource("folders")
  void the_hand_over_sheet_is_the_expected_one(String name) throws IOException {
    HandOverSheet sheet = new HandOverSheet(SmallRuleBase.expertise());
    compare(name, "hand-over.md", sheet.markdown(moment(name), name, "Net loft gate"));
  }

  @Test
  void there_are_records_to_compare() throws IOException {
    assertThat(folders()).hasSizeGreaterThanOrEqualTo(5);
  }

  @Test
  void a_record_names_the_versions_that_its_case_was_opened_with() {
    Event opened =
        new Event.Opened(
            "Net loft",
            Role.TECHNICIAN,
            "0123456789abcdef",
            Optional.empty(),
            List.of(),
            List.of("Gates 2026.11", "Harrow Quay estate 1.2"));
    try (Interview interview = SmallRuleBase.expertise().newInterview()) {
      Moment moment = interview.at(List.of(new Entry(1, MORNING, Role.TECHNICIAN, opened)));
      assertThat(new CaseRecord(SmallRuleBase.base()).markdown(moment, "1", "Net loft"))
          .contains("Rule base: Gates 2026.11, Harrow Quay estate 1.2, content 0123456789ab");
    }
  }

  private static String recordOf(Role second) {
    List<Entry> entries =
        List.of(
            new Entry(
                1, MORNING, Role.TECHNICIAN, new Event.Opened("Net loft", Role.TECHNICIAN, "f")),
            new Entry(2, MORNING, Role.TECHNICIAN, new Event.SetUpEntered("locked-off", "")),
            new Entry(3, MORNING, second, new Event.Repaired("tighten", false, "no spanner")));
    try (Interview interview = SmallRuleBase.expertise().newInterview()) {
      return new CaseRecord(SmallRuleBase.base()).markdown(interview.at(entries), "1", "Net loft");
    }
  }

  @Test
  void a_record_of_several_roles_says_who_did_what() {
    assertThat(recordOf(Role.ELECTRICIAN))
        .containsPattern("Entered: .* \\(technician\\)")
        .contains("could not be done: no spanner (electrician)");
    assertThat(recordOf(Role.TECHNICIAN)).doesNotContain("(technician)");
  }

  /** A case comes from another casebook as well as from this one. */
  @Test
  void nothing_in_the_events_of_a_case_can_put_a_mark_on_the_page() {
    String hostile = "\u001b[31m<script>x</script>\u202e";
    List<Event> told =
        List.of(
            new Event.Opened(hostile, Role.CALLER, hostile),
            new Event.SiteAnswered(hostile, hostile),
            new Event.Said(hostile),
            new Event.Complained(List.of(hostile)),
            new Event.Happened(List.of(hostile)),
            new Event.Answered(hostile, new Answer.Chosen(hostile)),
            new Event.Noted(hostile),
            new Event.GaveUp(hostile));
    List<Entry> entries = new ArrayList<>();
    for (Event event : told) {
      entries.add(new Entry(entries.size() + 1L, MORNING, Role.CALLER, event));
    }
    try (Interview interview = SmallRuleBase.expertise().newInterview()) {
      Moment moment = interview.at(entries);
      assertThat(new CaseRecord(SmallRuleBase.base()).markdown(moment, hostile, hostile))
          .contains("Rule base: \\[31m\\<script")
          .doesNotContain("\u001b", "\u202e")
          .doesNotContainPattern("(?<!\\\\)<");
      assertThat(new HandOverSheet(SmallRuleBase.expertise()).markdown(moment, hostile, hostile))
          .contains("\\<script")
          .doesNotContain("\u001b", "\u202e")
          .doesNotContainPattern("(?<!\\\\)<");
    }
  }

  private static void compare(String name, String file, String written) throws IOException {
    Path actual = Path.of("target/records", name, file);
    Files.createDirectories(actual.getParent());
    Files.writeString(actual, written);
    Path expected = RECORDS.resolve(name).resolve(file);
    assertThat(expected).as("what was written stands in %s", actual).exists();
    assertThat(written).isEqualTo(Files.readString(expected));
  }

  private static Moment moment(String name) {
    Path recorded = RECORDS.resolve(name).resolve("case.yaml");
    if (Files.exists(recorded)) {
      CaseFile file = CaseFile.read(recorded, SmallRuleBase.base());
      assertThat(file.problems()).isEmpty();
      return new Replayer(SmallRuleBase.expertise(), MORNING).run(file.cases().get(0)).moment();
    }
    try (Interview interview = SmallRuleBase.expertise().newInterview()) {
      return interview.at(events(RECORDS.resolve(name).resolve("events.yaml")));
    }
  }

  /** An entry without its number, which is its place in the list. */
  private record Line(Instant at, Role by, Event event) {}

  private static List<Entry> events(Path file) {
    try {
      List<Line> lines =
          new YAMLMapper().readValue(Files.readString(file), new TypeReference<List<Line>>() {});
      List<Entry> entries = new ArrayList<>();
      for (Line line : lines) {
        entries.add(new Entry(entries.size() + 1L, line.at(), line.by(), line.event()));
      }
      return entries;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
