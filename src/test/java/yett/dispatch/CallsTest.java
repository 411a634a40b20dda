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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import yett.interview.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.replay.CaseFile;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Replayer;

/** Recorded calls, replayed: how they end, what is asked, and what the technician brings. */
class CallsTest {
  private static final Expertise EXPERTISE =
      Expertise.of(
          RuleBase.read(KnowledgeSource.folder(Path.of("knowledge"))),
          Path.of("target/rule-cache"));
  private static final RuleBase BASE = EXPERTISE.base();
  private static final Instant TUESDAY = Instant.parse("2026-11-24T19:30:00Z");
  private static final Map<RecordedCase, Replayed> CALLS = new LinkedHashMap<>();

  @BeforeAll
  static void replay() {
    CaseFile file = CaseFile.read(Path.of("knowledge/calls/harrow-quay.case.yaml"), BASE);
    assertThat(file.problems()).isEmpty();
    Replayer replayer = new Replayer(EXPERTISE, TUESDAY);
    file.cases().forEach(c -> CALLS.put(c, replayer.run(c)));
    assertThat(CALLS).hasSizeGreaterThanOrEqualTo(40);
  }

  @Test
  void nineteen_of_twenty_calls_end_as_they_should() {
    List<String> wrong = new ArrayList<>();
    CALLS.forEach(
        (call, replayed) -> {
          if (!replayed.ended().equals(call.call().ends().orElseThrow())) {
            wrong.add(
                call.name() + " ended " + replayed.ended() + ": " + replayed.because() + asked(replayed));
          }
        });
    assertThat(wrong.size()).as("%s", wrong).isLessThanOrEqualTo(CALLS.size() / 20);
  }

  private static String asked(Replayed replayed) {
    return replayed.steps().stream()
            .filter(s -> Set.of("check", "repair", "proof", "retest").contains(s.kind()))
            .map(s -> s.id() + "=" + s.answer())
            .toList()
        + " "
        + replayed.ranking().stream().limit(4).toList();
  }

  @Test
  void nothing_is_proposed_that_a_caller_may_not_do() {
    CALLS.forEach(
        (call, replayed) -> {
          assertThat(replayed.unsafe()).as(call.name()).isEmpty();
          for (Replayed.Taken step : replayed.steps()) {
            if (step.kind().equals("check") || step.kind().equals("proof")) {
              assertThat(BASE.checks().get(step.id()).who()).isEqualTo(Role.CALLER);
            } else if (step.kind().equals("repair")) {
              assertThat(BASE.repairs().get(step.id()).who()).isEqualTo(Role.CALLER);
            }
            assertThat(step.kind()).isNotIn("enter", "leave");
          }
        });
  }

  @Test
  void at_most_eight_questions_in_the_median() {
    List<Long> questions =
        CALLS.values().stream()
            .map(r -> r.steps().stream().filter(s -> s.kind().equals("check")).count())
            .sorted()
            .toList();
    assertThat(questions.get(questions.size() / 2)).as("%s", questions).isLessThanOrEqualTo(8);
  }

  @Test
  void the_parts_that_cover_nine_in_ten_hold_the_needed_one_nine_times_in_ten() {
    int sent = 0;
    List<String> missing = new ArrayList<>();
    for (Map.Entry<RecordedCase, Replayed> e : CALLS.entrySet()) {
      boolean handedOver = e.getValue().ended().equals("handed-over");
      if (handedOver && e.getKey().call().parts().isPresent()) {
        sent++;
        DispatchSheet sheet = sheet(e.getValue());
        List<String> needed = e.getKey().call().parts().get();
        if (!sheet.bring().parts().containsAll(needed)) {
          missing.add(
              e.getKey().name() + " " + needed + " " + sheet.bring() + " " + sheet.believed());
        }
      }
    }
    assertThat(missing.size()).as("of %d: %s", sent, missing).isLessThanOrEqualTo(sent / 10);
  }

  @Test
  void every_sheet_keeps_to_its_schema() throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("shared/dispatch.schema.json")));
    for (Replayed replayed : CALLS.values()) {
      assertThat(schema.validate(DispatchJson.write(sheet(replayed)), InputFormat.JSON)).isEmpty();
    }
  }

  private static DispatchSheet sheet(Replayed replayed) {
    return new Dispatcher(EXPERTISE, ZoneOffset.UTC)
        .sheet(replayed.moment(), "2026-0001", "Harrow Quay");
  }
}
