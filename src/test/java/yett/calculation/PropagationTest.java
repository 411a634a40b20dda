package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PropagationTest {

  @Test
  void the_end_gauge_of_the_guide() {
    // JCGM 100, annex H.1: l = ls + d - ls (da t + as dt), in nm and degC; ls = 50 000 623 (u 25),
    // d = 215 (9.7), da = 0 within 1e-6, t = -0.1 (0.41), as = 11.5e-6 (1.2e-6), dt = 0 within
    // 0.05.
    // The guide gives l = 50 000 838 nm and uc = 32 nm from uc² = 1002 nm².
    double[] u =
        Propagation.standardUncertainties(
            x -> new double[] {x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5])},
            new double[] {50_000_623, 215, 0, -0.1, 11.5e-6, 0},
            new double[] {
              25,
              9.7,
              InstrumentUncertainty.standard(1e-6),
              0.41,
              1.2e-6,
              InstrumentUncertainty.standard(0.05)
            });
    assertThat(u[0] * u[0]).isCloseTo(1002, within(2.0));
    assertThat(u[0]).isCloseTo(32, within(0.5));
  }

  @Test
  void products_add_relative_uncertainties() {
    // JCGM 100, 5.1.6: for P = V²/R, (u/P)² = (2 uV/V)² + (uR/R)².
    double[] u =
        Propagation.standardUncertainties(
            x -> new double[] {x[0] * x[0] / x[1], x[0] - x[1]},
            new double[] {24, 8},
            new double[] {0.024, 0.016});
    assertThat(u[0]).isCloseTo(72 * Math.hypot(0.002, 0.002), within(1e-5));
    assertThat(u[1]).isCloseTo(Math.hypot(0.024, 0.016), within(1e-12));
  }

  @Test
  void at_the_edge_of_a_formula_one_side_is_enough() {
    double[] u =
        Propagation.standardUncertainties(
            x -> new double[] {3 * Require.notNegative("length", x[0])},
            new double[] {0},
            new double[] {0.1});
    assertThat(u[0]).isCloseTo(0.3, within(1e-12));
  }

  @Test
  void certain_inputs_leave_no_doubt() {
    assertThat(
            Propagation.standardUncertainties(
                x -> new double[] {x[0]}, new double[] {1}, new double[] {0}))
        .containsExactly(0);
    assertThatThrownBy(
            () ->
                Propagation.standardUncertainties(
                    x -> new double[] {x[0]}, new double[] {1}, new double[] {-1}))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
