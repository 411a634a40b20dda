package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.calculation.Trend.Point;

class TrendTest {
  /** y, x of the Norris data (NIST Statistical Reference Datasets, linear regression). */
  private static final double[] NORRIS = {
    0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5, 668.5, 666.3,
    998.5, 996.3, 449.1, 448.6, 778.9, 777.0, 559.2, 558.2, 0.3, 0.4, 0.1, 0.6, 778.1, 775.5,
    668.8, 666.9, 339.3, 338.0, 448.9, 447.5, 10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0, 995.8,
    888.8, 887.6, 119.6, 120.2, 0.3, 0.3, 0.6, 0.3, 557.6, 556.8, 339.3, 339.1, 888.0, 887.2,
    998.5, 999.0, 778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2, 668.4, 669.1, 449.2, 448.9,
    0.2, 0.5
  };

  /**
   * The certified slope and its standard deviation are NIST's. Student's t of 34 degrees of
   * freedom, two-sided 95 %: 2.032 (common tables).
   */
  @Test
  void slope_and_interval_are_those_that_nist_certified() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < NORRIS.length; i += 2) {
      points.add(new Point(NORRIS[i + 1], NORRIS[i]));
    }
    assertThat(points).hasSize(36);
    Trend trend = Trend.of(points, 0).orElseThrow();
    assertThat(trend.slope()).isCloseTo(1.00211681802045, within(1e-12));
    double deviation = 0.429796848199937e-3;
    assertThat(trend.high() - trend.slope()).isCloseTo(2.032 * deviation, within(5e-4 * deviation));
    assertThat(trend.slope() - trend.low()).isCloseTo(trend.high() - trend.slope(), within(1e-12));
    // intercept -0.262323073774029 certified: the line at the last x
    assertThat(trend.now()).isCloseTo(-0.262323073774029 + 1.00211681802045 * 999.0, within(1e-9));
  }

  /** Three on a line by chance: the standard error is u / sqrt(sum of squares), 1.96 of it. */
  @Test
  void readings_on_a_line_are_no_surer_than_their_instrument() {
    List<Point> points = List.of(new Point(0, 50), new Point(1, 55), new Point(2, 60));
    Trend sure = Trend.of(points, 0).orElseThrow();
    assertThat(sure.rises()).isTrue();
    Trend tape = Trend.of(points, 5).orElseThrow();
    assertThat(tape.slope()).isCloseTo(5, within(1e-12));
    assertThat(tape.high() - 5).isCloseTo(1.959964 * 5 / Math.sqrt(2), within(1e-5));
    assertThat(tape.rises()).isFalse();
    assertThat(tape.until(80)).isEmpty();
  }

  @Test
  void a_limit_ahead_is_met_by_the_steepest_first() {
    List<Point> points = List.of(new Point(0, 50), new Point(1, 55), new Point(2, 60));
    Trend.Ahead ahead = Trend.of(points, 1).orElseThrow().until(70).orElseThrow();
    assertThat(ahead.about()).isCloseTo(2, within(1e-9));
    assertThat(ahead.soonest()).isCloseTo(10 / (5 + 1.959964 / Math.sqrt(2)), within(1e-5));
    assertThat(ahead.latest()).isCloseTo(10 / (5 - 1.959964 / Math.sqrt(2)), within(1e-5));
    assertThat(Trend.of(points, 1).orElseThrow().until(40)).as("behind it").isEmpty();
  }

  @Test
  void two_readings_or_half_a_season_are_no_trend() {
    assertThat(Trend.of(List.of(new Point(0, 1), new Point(3, 2)), 0)).isEmpty();
    assertThat(Trend.of(List.of(new Point(0, 1), new Point(0.2, 2), new Point(0.4, 3)), 0))
        .isEmpty();
  }
}
