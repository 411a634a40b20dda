package yett.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import yett.interview.course.Expertise;
import yett.interview.event.Ending;
import yett.knowledge.RuleBase;
import yett.replay.CaseFile;
import yett.testing.Shipped;

/** With the shipped rules: what they call unsafe of a step is unsafe for a trainee as well. */
class SafetyGateTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final Expertise EXPERTISE = Shipped.EXPERTISE;

  private static Workbench bench(String text) {
    CaseFile file = CaseFile.read("quay.case.yaml", text, BASE);
    assertThat(file.problems()).isEmpty();
    Exercise exercise = new Exercises(EXPERTISE).of(file.cases().get(0), 1).orElseThrow();
    return new Workbench(EXPERTISE, exercise, List.of(), entry -> {});
  }

  @Test
  void a_leaf_whose_end_stop_was_seen_loose_is_not_released() {
    try (Workbench bench =
        bench(
            """
            case: ferry-end-stop
            person: technician
            complaints: [bangs-at-the-end]
            answers: {end-stop-look: shifted}
            truth: [end-stop-struck]
            """)) {
      bench.lookForDangers();
      var released = BASE.setUps().get("leaf-released");
      assertThat(bench.refused(released)).as("before anybody looked").isEmpty();
      bench.ask(BASE.checks().get("end-stop-look"));
      Refusal refusal = bench.refused(released).orElseThrow();
      assertThat(refusal.slip()).isTrue();
      assertThat(refusal.why()).contains("loose or shifted");
      assertThat(refusal.cautions()).isNotEmpty();
      assertThat(bench.slips()).hasSize(1);
      assertThat(bench.refused(BASE.setUps().get("locked-off"))).isEmpty();
    }
  }

  @Test
  void a_gate_that_is_not_repaired_is_handed_over_locked_off_but_not_released() {
    try (Workbench bench =
        bench(
            """
            case: tank-farm-heavy-leaf
            person: technician
            complaints: [scrapes]
            truth: [wheel-worn]
            """)) {
      bench.lookForDangers();
      bench.enter(BASE.setUps().get("locked-off"));
      bench.enter(BASE.setUps().get("leaf-released"));
      assertThat(bench.handOverRefused().orElseThrow().leave())
          .containsExactly(BASE.setUps().get("leaf-released"));
      bench.leave(BASE.setUps().get("leaf-released"));
      assertThat(bench.handOverRefused()).isEmpty();
      bench.close(Ending.HANDED_OVER);
      assertThat(bench.moment().state().work().setUps()).contains("locked-off");
    }
  }

  @Test
  void what_is_not_fitted_is_no_slip() {
    try (Workbench bench =
        bench(
            """
            case: tank-farm-edges
            person: technician
            site: {edges: none}
            complaints: [closes-partway]
            truth: [beam-dirty]
            """)) {
      bench.lookForDangers();
      Refusal refusal = bench.refused(BASE.checks().get("edge-look")).orElseThrow();
      assertThat(refusal.slip()).isFalse();
      assertThat(refusal.why()).startsWith("Not on this gate").doesNotContain("judgement");
      assertThat(bench.slips()).isEmpty();
    }
  }

  @Test
  void the_example_of_the_page_can_be_practised() throws IOException {
    Matcher yaml =
        Pattern.compile("(?s)```yaml\n(case: .*?)```")
            .matcher(Files.readString(Path.of("docs/practice.md")));
    assertThat(yaml.find()).isTrue();
    try (Workbench bench = bench(yaml.group(1))) {
      assertThat(bench.exercise().area()).isEqualTo("leaf");
      assertThat(bench.exercise().told().story()).contains("Ferry");
    }
  }
}
