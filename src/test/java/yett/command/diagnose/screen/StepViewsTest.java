package yett.command.diagnose.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.testing.Shipped;

/** A marker that was missing and was fitted: what is looked for afterwards is something else. */
class StepViewsTest extends TechniciansCase {
  private String asked(String check, Occasion.Kind why, Event... events) {
    try (OpenCase open = typed.open()) {
      open.record(
          new Event.Complained(List.of("runs-then-stops")),
          new Event.Answered("marker-look", new Answer.Chosen("gone")));
      open.record(events);
      Sitting sitting = typed.sitting(open);
      Step.Ask step =
          new Step.Ask(
              Shipped.BASE.checks().get(check),
              List.of(),
              Optional.empty(),
              Optional.empty(),
              Occasion.of(why));
      sitting.screen(sitting.views().ask(step, open.moment(), 1));
      return typed.screen();
    }
  }

  @Test
  void a_check_tells_which_cause_each_answer_would_leave() {
    assertThat(asked("limit-shift", Occasion.Kind.WORTH))
        .contains("then reference marker gone from the chain");
  }

  @Test
  void of_a_cause_that_was_put_right_only_what_is_left_of_it_counts() {
    assertThat(asked("limit-shift", Occasion.Kind.WORTH, new Event.Repaired("fit-marker", true)))
        .contains("both ends are right – 8")
        .doesNotContain("99 %")
        .doesNotContainPattern("both ends are right [^;]*; then reference marker");
  }

  @Test
  void a_proof_looks_for_no_cause() {
    assertThat(asked("guards-in-place", Occasion.Kind.PROOF))
        .contains("1 all guards and screens are in place and firm –")
        .doesNotContain("; then ");
  }
}
