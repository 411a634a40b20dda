package yett.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import yett.interview.course.Expertise;
import yett.knowledge.Cause;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.record.DispatchPage;
import yett.replay.CaseFile;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Replayer;
import yett.testing.Shipped;
import yett.testing.Size;

/** Recorded calls, replayed: how they end, what is asked, and what the technician brings. */
class CallsTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final Instant TUESDAY = Instant.parse("2026-11-24T19:30:00Z");
  private static List<Call> calls;

  /** A call as it was recorded, as it went, and the sheet that would be printed after it. */
  private record Call(RecordedCase recorded, Replayed replayed, DispatchSheet sheet) {
    long questions() {
      return replayed.steps().stream().filter(s -> s.kind().equals("check")).count();
    }

    boolean wasInDanger() {
      return CallsTest.wasInDanger(recorded);
    }

    boolean endsAsItShould() {
      return replayed.ended().equals(recorded.call().ends().orElseThrow());
    }

    /** Whether somebody was sent of whom it is recorded what they needed. */
    boolean sentForParts() {
      return replayed.ended().equals("handed-over") && recorded.call().parts().isPresent();
    }

    boolean bringsWhatIsNeeded() {
      return sheet.bring().names().containsAll(recorded.call().parts().orElseThrow());
    }
  }

  @BeforeAll
  static void replay() {
    Expertise expertise = Shipped.EXPERTISE;
    List<RecordedCase> recorded =
        Stream.of("harrow-quay", "from-sayings").flatMap(f -> read(f).stream()).toList();
    Replayer replayer = new Replayer(expertise, TUESDAY);
    Dispatcher dispatcher = new Dispatcher(expertise, ZoneOffset.UTC);
    calls =
        tried(recorded).parallelStream()
            .map(
                c -> {
                  Replayed replayed = replayer.run(c);
                  return new Call(
                      c,
                      replayed.withoutMoment(),
                      dispatcher.sheet(replayed.moment(), "2026-0001", "Harrow Quay"));
                })
            .toList();
    assertThat(recorded).hasSizeGreaterThanOrEqualTo(86);
    assertThat(calls).filteredOn(Call::wasInDanger).hasSizeGreaterThanOrEqualTo(5);
  }

  private static List<RecordedCase> read(String name) {
    CaseFile file = CaseFile.read(Path.of("knowledge/calls/" + name + ".case.yaml"), BASE);
    assertThat(file.problems()).isEmpty();
    return file.cases();
  }

  /** Every call with a danger, and of the others one in four, or all. */
  private static List<RecordedCase> tried(List<RecordedCase> all) {
    return IntStream.range(0, all.size())
        .filter(i -> i % Size.of(4, 1) == 0 || wasInDanger(all.get(i)))
        .mapToObj(all::get)
        .toList();
  }

  private static boolean wasInDanger(RecordedCase call) {
    return call.call().ends().equals(Optional.of("made-safe"));
  }

  @Test
  void every_call_ends_as_it_should() {
    List<String> wrong =
        calls.stream()
            .filter(c -> !c.endsAsItShould())
            .map(
                c ->
                    "%s ended %s (%s) after %s"
                        .formatted(
                            c.recorded().name(),
                            c.replayed().ended(),
                            c.replayed().because(),
                            c.replayed().steps().stream()
                                .map(s -> s.id() + "=" + s.answer())
                                .toList()))
            .toList();
    assertThat(wrong).isEmpty();
  }

  @Test
  void every_danger_ends_the_call_and_no_call_without_danger_ends_so() {
    assertThat(calls)
        .allSatisfy(
            c ->
                assertThat(c.replayed().ended().equals("made-safe"))
                    .as(c.recorded().name())
                    .isEqualTo(c.wasInDanger()));
  }

  @Test
  void nothing_is_proposed_that_a_caller_may_not_do() {
    for (Call call : calls) {
      assertThat(call.replayed().unsafe()).as(call.recorded().name()).isEmpty();
      for (Replayed.Taken step : call.replayed().steps()) {
        switch (step.kind()) {
          case "check", "proof" ->
              assertThat(BASE.checks().get(step.id()).who()).isEqualTo(Role.CALLER);
          case "repair" -> assertThat(BASE.repairs().get(step.id()).who()).isEqualTo(Role.CALLER);
          default -> assertThat(step.kind()).isNotIn("enter", "leave");
        }
      }
    }
  }

  @Test
  void at_most_six_questions_in_the_median() {
    List<Long> questions = calls.stream().map(Call::questions).sorted().toList();
    assertThat(questions.get(questions.size() / 2)).as("%s", questions).isLessThanOrEqualTo(6);
  }

  /** Where nobody has seen its batteries, as is usual on the telephone. */
  @Test
  void breaker_and_switch_are_among_the_first_three_questions_of_a_dead_gate() {
    List<Call> tripped =
        calls.stream()
            .filter(c -> c.recorded().answers().containsKey("breaker-position"))
            .filter(c -> !c.recorded().site().containsKey("batteries"))
            .filter(c -> c.recorded().complaints().contains("does-nothing"))
            .toList();
    assertThat(tripped).isNotEmpty();
    for (Call call : tripped) {
      List<String> asked =
          call.replayed().steps().stream()
              .filter(s -> s.kind().equals("check"))
              .map(Replayed.Taken::id)
              .limit(3)
              .toList();
      assertThat(asked).as(call.recorded().name()).contains("breaker-position");
    }
  }

  @Test
  void who_can_tell_nothing_is_asked_at_most_five_questions() {
    assertThat(calls)
        .filteredOn(c -> !c.recorded().othersUsual() && !c.wasInDanger())
        .allSatisfy(c -> assertThat(c.questions()).as(c.recorded().name()).isLessThanOrEqualTo(5));
  }

  @Test
  void the_parts_that_cover_nine_in_ten_hold_the_needed_one_nine_times_in_ten() {
    List<Call> sent = calls.stream().filter(Call::sentForParts).toList();
    assertThat(sent).hasSizeGreaterThan(Size.of(5, 20));
    List<String> missing =
        sent.stream()
            .filter(c -> !c.bringsWhatIsNeeded())
            .map(c -> c.recorded().name() + " " + c.sheet().bring())
            .toList();
    assertThat(missing).hasSizeLessThanOrEqualTo(sent.size() / 10);
  }

  @Test
  void every_sheet_keeps_to_its_schema_and_says_what_its_parts_are_good_for() throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("shared/dispatch.schema.json")));
    for (Call call : calls) {
      assertThat(schema.validate(DispatchJson.write(call.sheet()), InputFormat.JSON)).isEmpty();
      DispatchSheet.Cover bring = call.sheet().bring();
      assertThat(bring.covers()).as(call.recorded().name()).isGreaterThanOrEqualTo(0.9 - 1e-9);
      assertThat(bring.parts().stream().map(DispatchSheet.Packed::covers)).isSorted();
      if (!call.replayed().ended().equals("solved")) {
        assertThat(call.sheet().untilThen()).as(call.recorded().name()).isNotEmpty();
      }
    }
  }

  /** Counted as it is printed on a terminal of 80 letters, blank lines too. */
  @Test
  void every_sheet_fits_one_page() {
    for (Call call : calls) {
      String page = DispatchPage.markdown(call.sheet(), Optional.of("EUR"));
      int lines = page.lines().mapToInt(l -> Math.max(1, (l.length() + 79) / 80)).sum();
      assertThat(lines).as(call.recorded().name() + "\n" + page).isLessThanOrEqualTo(60);
    }
  }

  /** What is unknown has one figure, among the causes and beside the parts. */
  @Test
  void one_figure_for_one_thing() {
    for (Call call : calls) {
      call.sheet().believed().stream()
          .filter(b -> b.cause().equals(Cause.NOT_IN_RULE_BASE))
          .forEach(b -> assertThat(call.sheet().bring().unknown()).isEqualTo(b.chance()));
    }
  }
}
