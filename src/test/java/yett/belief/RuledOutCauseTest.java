package yett.belief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RuledOutCauseTest {
  private final CausalModel model =
      CausalModel.builder()
          .cause("charger-dead", 0.05)
          .cause("batteries-low", 0.1)
          .cause("chain-slack", 0.1)
          .link("charger-dead", "batteries-low", 0.7)
          .check("hums", new double[] {0.9, 0.1}, Map.of("chain-slack", new double[] {0.2, 0.8}))
          .build();

  @Test
  void a_cause_that_cannot_be_on_a_site_is_not_brought_about_either() {
    Belief belief = Belief.atReport(model.withOdds(Map.of("batteries-low", 0.0)), 3);
    assertThat(belief.atCallOut("batteries-low")).isZero();
    // Of 1 - 0.95 x 0.9 = 0.145 that anything is there, 0.05 is the charger.
    assertThat(belief.atCallOut("charger-dead")).isCloseTo(0.05 / 0.145, within());
  }

  @Test
  void a_cause_and_what_it_brings_about_can_both_be_ruled_out() {
    Belief belief =
        Belief.atReport(model.withOdds(Map.of("batteries-low", 0.0, "charger-dead", 0.0)), 3)
            .learn(new Observation("hums", List.of(0.0, 1.0)));
    assertThat(belief.atCallOut("chain-slack")).isCloseTo(1, within());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-12);
  }
}
