package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Advice.Candidate;
import yett.testing.Shipped;

class ReasonsTest {
  private static final RuleBase BASE = Shipped.BASE;

  private static Step.Ask ask(Occasion.Kind occasion, boolean findingOut, Candidate... candidates) {
    var advice =
        new Advice(Advice.Kind.ASK, List.of(candidates), List.of(), 300, 342.5, findingOut);
    return new Step.Ask(
        BASE.checks().get("fault-shown"),
        List.of(),
        Optional.empty(),
        Optional.of(advice),
        Occasion.of(occasion));
  }

  @Test
  void what_a_check_saves_is_set_against_the_one_that_came_second() {
    var step =
        ask(
            Occasion.Kind.WORTH,
            false,
            new Candidate("fault-shown", 6, 42.5),
            new Candidate("beam-path", 4, 40));

    assertThat(Reasons.of(step).words())
        .isEqualTo(
            "saves 42.5 minutes on average against repairing at once; \"beam-path\" would save"
                + " 40.0 minutes");
    assertThat(Reasons.withoutRunnerUp(step)).doesNotContain("beam-path");
  }

  /** The second may seem to save more: it is not what it was chosen by. */
  @Test
  void while_no_repair_is_worth_trying_nothing_is_said_of_minutes_saved() {
    var step =
        ask(
            Occasion.Kind.BEHIND,
            true,
            new Candidate("fault-shown", 6, 40),
            new Candidate("beam-path", 4, 42.5));

    assertThat(Reasons.of(step).words())
        .isEqualTo(
            "the gate runs; this looks for an underlying cause; resolves most for its cost,"
                + " while no repair is worth trying; \"beam-path\" came second");
    assertThat(Reasons.withoutRunnerUp(step)).doesNotContain("beam-path");
  }

  @Test
  void a_check_without_a_rival_says_so() {
    assertThat(
            Reasons.of(ask(Occasion.Kind.WORTH, false, new Candidate("fault-shown", 6, 1))).words())
        .endsWith("; no other check tells anything");
  }
}
