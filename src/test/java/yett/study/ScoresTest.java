package yett.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.study.Scores.Forecast;

class ScoresTest {
  private static List<Forecast> forecasts(double chance, int right, int of) {
    List<Forecast> all = new ArrayList<>();
    for (int i = 0; i < of; i++) {
      all.add(new Forecast(chance, i < right));
    }
    return all;
  }

  /** The worked example of a widely used library's documentation of the score; from memory. */
  @Test
  void the_brier_score_is_the_mean_squared_distance() {
    List<Forecast> four =
        List.of(
            new Forecast(0.1, false),
            new Forecast(0.9, true),
            new Forecast(0.8, true),
            new Forecast(0.3, false));
    assertThat(Scores.of(four, 10).brier()).isCloseTo(0.0375, within(1e-12));
  }

  /**
   * By hand from Murphy's formulas (J. Appl. Meteor. 12, 1973): 0.1 eight times with one hit, 0.5
   * six times with four, 0.9 six times with five. Reliability is (8·0.025² + 6·(1/6)² +
   * 6·(1/15)²)/20, resolution (8·0.375² + 6·(1/6)² + 6·(1/3)²)/20.
   */
  @Test
  void the_score_falls_into_murphys_three_parts() {
    List<Forecast> all = forecasts(0.1, 1, 8);
    all.addAll(forecasts(0.5, 4, 6));
    all.addAll(forecasts(0.9, 5, 6));
    Scores scores = Scores.of(all, 10);
    assertThat(scores.brier()).isCloseTo(0.162, within(1e-12));
    assertThat(scores.reliability()).isCloseTo(0.0099166667, within(1e-10));
    assertThat(scores.resolution()).isCloseTo(0.0979166667, within(1e-10));
    assertThat(scores.uncertainty()).isCloseTo(0.25, within(1e-12));
    assertThat(scores.calibrationError()).isCloseTo(0.08, within(1e-12));
    assertThat(scores.left()).isCloseTo(0, within(1e-12));
  }

  @Test
  void forecasts_of_unequal_size_in_a_group_leave_something_over() {
    Scores scores = Scores.of(List.of(new Forecast(0.81, false), new Forecast(0.89, true)), 10);
    assertThat(scores.groups()).hasSize(1);
    assertThat(scores.left()).isCloseTo(0.0016 - 0.04, within(1e-12));
  }

  @Test
  void nine_in_ten_do_not_exceed_the_ninetieth_percentile() {
    Sample ten = new Sample(new double[] {10, 2, 3, 9, 5, 6, 7, 8, 4, 1});
    assertThat(ten.ninetieth()).isEqualTo(9);
    assertThat(ten.mean()).isEqualTo(5.5);
  }
}
