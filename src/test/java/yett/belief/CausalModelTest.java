package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

class CausalModelTest {
  private static CausalModel.Builder chargerAndBattery() {
    return CausalModel.builder()
        .cause("battery", 0.04)
        .cause("charger", 0.05)
        .link("charger", "battery", 0.85);
  }

  @Test
  void a_cause_that_is_ruled_out_is_not_brought_about_either() {
    CausalModel model = chargerAndBattery().build().withOdds(Map.of("battery", 0.0));
    Belief belief = Belief.prior(model, 2);
    assertThat(belief.atCallOut("battery")).isZero();
    assertThat(belief.atCallOut("charger")).isCloseTo(0.05, within(1e-12));
  }

  @Test
  void a_factor_multiplies_the_odds() {
    CausalModel model =
        CausalModel.builder().cause("battery", 0.2).build().withOdds(Map.of("battery", 3.0));
    // Odds 1 to 4 become 3 to 4.
    assertThat(Belief.prior(model, 1).atCallOut("battery")).isCloseTo(3.0 / 7, within(1e-12));
  }

  @Test
  void a_certain_link_leaves_no_set_with_the_parent_alone() {
    CausalModel model =
        CausalModel.builder()
            .cause("effect", 0)
            .cause("origin", 0.25)
            .link("origin", "effect", 1)
            .check("lamp", new double[] {0.9, 0.1}, Map.of("effect", new double[] {0, 1}))
            .build();
    Belief belief = Belief.prior(model, 2);
    assertThat(belief.atCallOut()).containsExactly(0.25, 0.25);
    // Lit: 0.25 x 1 against 0.75 x 0.1.
    assertThat(belief.learn(Observation.of("lamp", 1, 2)).atCallOut("origin"))
        .isCloseTo(10.0 / 13, within(1e-12));
  }

  @Test
  void an_answer_that_nothing_allows_is_refused_by_name() {
    CausalModel model =
        CausalModel.builder()
            .cause("fuse", 0.2)
            // 0.7 + 0.2 + 0.1 is not 1 in binary; the fourth outcome must stay impossible.
            .check(
                "lamp", new double[] {0.7, 0.2, 0.1, 0}, Map.of("fuse", new double[] {0, 0, 1, 0}))
            .build();
    assertThatThrownBy(() -> Belief.atReport(model).learn(Observation.of("lamp", 3, 4)))
        .isInstanceOf(ImpossibleEvidence.class)
        .hasMessageContaining("\"lamp\"");
  }

  @Test
  void a_report_when_every_cause_is_ruled_out_is_refused() {
    CausalModel model = chargerAndBattery().build();
    assertThatThrownBy(
            () -> Belief.atReport(model.withOdds(Map.of("battery", 0.0, "charger", 0.0))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no cause of the model has any chance");
  }

  @Test
  void links_that_form_a_loop_are_refused() {
    assertThatThrownBy(() -> chargerAndBattery().link("battery", "charger", 0.1).build())
        .hasMessageContaining("form a loop");
  }

  @Test
  void a_repetition_of_a_repetition_is_refused_in_whatever_order_they_are_named() {
    CausalModel.Builder builder = chargerAndBattery();
    for (String check : new String[] {"first", "second", "third"}) {
      builder.check(check, new double[] {0.9, 0.1}, Map.of());
    }
    builder.repeats("third", "second", 0.5, 0, 1).repeats("second", "first", 0.5, 0, 1);
    assertThatThrownBy(builder::build).hasMessageContaining("repeats another check itself");
  }

  @Test
  void a_repair_that_can_fail_leaves_the_cause_in_doubt_and_what_was_there_in_memory() {
    Belief before = Belief.prior(chargerAndBattery().build(), 2);
    Belief after = before.repaired(Map.of("battery", 0.9)).repaired(Map.of("battery", 0.9));
    assertThat(after.atCallOut()).containsExactly(before.atCallOut(), within(1e-12));
    assertThat(after.remaining()[0]).isCloseTo(0.01 * before.remaining()[0], within(1e-12));
  }

  /** Sets of at most two of three independent causes, added up by hand. */
  @Test
  void kinds_of_one_cause_count_once_where_both_are_there() {
    CausalModel model =
        CausalModel.builder()
            .cause("unknown", 0.1)
            .cause("plain", 0.2)
            .kind("unknown", "like-plain", 0.3)
            .build();
    double none = 0.9 * 0.8 * 0.7;
    double both = 0.1 * 0.8 * 0.3; // the two kinds, and nothing else
    double unknown = 0.1 * 0.8 * 0.7 + 0.9 * 0.8 * 0.3 + both + 0.1 * 0.2 * 0.7 + 0.9 * 0.2 * 0.3;
    double all = unknown + 0.9 * 0.2 * 0.7;

    double[] chances = Belief.atReport(model, 2).atCallOut();

    assertThat(none).isCloseTo(1 - all - 0.1 * 0.2 * 0.3, within(1e-12));
    assertThat(chances[0]).isCloseTo(unknown / all, within(1e-12));
  }
}
