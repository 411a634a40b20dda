package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.calculation.ObstructionForce.Verdict;

/**
 * The figures are those of EN 12453 as a trade federation's and test houses' summaries print them:
 * 400 N up to a gap of 500 mm, 1400 N beyond, 150 N after 0.75 s, 25 N after 5 s.
 */
class ForcePointTest {
  private static Verdict verdict(int gap, int times, double peak, double above) {
    return new ForcePoint(gap, times, peak, above, Optional.empty()).verdict();
  }

  @Test
  void a_point_is_held_against_the_limits_of_its_gap() {
    assertThat(verdict(50, 3, 399, 0.74)).isEqualTo(Verdict.MET);
    assertThat(verdict(50, 3, 401, 0.3)).isEqualTo(Verdict.MISSED);
    assertThat(verdict(500, 3, 401, 0.3)).isEqualTo(Verdict.MISSED);
    assertThat(verdict(800, 3, 401, 0.3)).isEqualTo(Verdict.MET);
    assertThat(verdict(800, 3, 1401, 0.3)).isEqualTo(Verdict.MISSED);
    assertThat(verdict(300, 3, 200, 0.76)).isEqualTo(Verdict.MISSED);
    assertThat(new ForcePoint(300, 3, 200, 0.1, Optional.of(26.0)).verdict())
        .isEqualTo(Verdict.MISSED);
  }

  @Test
  void once_or_twice_is_not_enough_to_pass() {
    assertThat(verdict(50, 2, 300, 0.2)).isEqualTo(Verdict.OPEN);
    assertThat(verdict(50, 1, 500, 0.2)).as("but enough to fail").isEqualTo(Verdict.MISSED);
  }
}
