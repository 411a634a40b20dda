package yett.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yett.belief.Belief;
import yett.testing.Shipped;

/** What a card wants measured before its repair is measured, however sure the repair is. */
class MeasureFirstTest {
  private static final Belief WORN =
      Belief.roughly(Shipped.EXPERTISE.model().withOdds(Map.of("batteries-worn", 1e6)));

  @Test
  void nobody_fits_batteries_before_the_charging_voltage_is_read() {
    Advice advice = advise(Set.of("charging-voltage", "terminal-look"));

    assertThat(advice.kind()).isEqualTo(Advice.Kind.ASK);
    assertThat(advice.candidates().get(0).check()).isEqualTo("charging-voltage");
    assertThat(advice.confirming()).isTrue();
  }

  @Test
  void what_cannot_be_measured_keeps_nobody_from_the_repair() {
    Advice advice = advise(Set.of("terminal-look"));

    assertThat(advice.kind()).isEqualTo(Advice.Kind.REPAIR);
    assertThat(advice.jobs().get(0).repair()).isEqualTo("replace-batteries");
  }

  private static Advice advise(Set<String> checks) {
    return Shipped.EXPERTISE
        .planner()
        .advise(WORN, new Planner.Options(checks, Set.of("replace-batteries"), Set.of(), false));
  }
}
