package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.numbers.gamma.LogGamma;
import org.junit.jupiter.api.Test;

class SharePosteriorTest {
  private static SharePosterior even(int hits, int others) {
    return new SharePosterior(new double[] {0.5, 0.5}, 2, new int[] {hits, others});
  }

  /**
   * 437 girls in 980 births with placenta previa, from an even judgement of two cases' weight: mean
   * 0.446, 95 % from 0.415 to 0.477 (Gelman, Carlin, Stern and Rubin, Bayesian Data Analysis,
   * section 2.4; from memory).
   */
  @Test
  void girls_among_births_with_placenta_previa() {
    SharePosterior girls = even(437, 543);
    assertThat(girls.mean(0)).isCloseTo(0.446, within(5e-4));
    assertThat(girls.range(0).low()).isCloseTo(0.415, within(5e-4));
    assertThat(girls.range(0).high()).isCloseTo(0.477, within(5e-4));
  }

  /** The rule of succession (Laplace): after 5 of 5, 6 of 7. The range is in closed form there. */
  @Test
  void what_always_happened_is_not_certain() {
    SharePosterior always = even(5, 0);
    assertThat(always.mean(0)).isCloseTo(6.0 / 7, within(1e-12));
    assertThat(always.range(0).low()).isCloseTo(Math.pow(0.025, 1.0 / 6), within(1e-9));
    assertThat(always.range(0).high()).isCloseTo(Math.pow(0.975, 1.0 / 6), within(1e-9));
  }

  /** The Dirichlet-multinomial probability of the counts, by a library's gamma function. */
  @Test
  void decibans_are_the_ratio_of_what_either_said_beforehand() {
    double[] judged = {0.7, 0.2, 0.1};
    int[] counts = {3, 6, 11};
    double log = LogGamma.value(12) - LogGamma.value(12 + 20);
    double card = 0;
    for (int i = 0; i < 3; i++) {
      log += LogGamma.value(12 * judged[i] + counts[i]) - LogGamma.value(12 * judged[i]);
      card += counts[i] * Math.log(judged[i]);
    }
    assertThat(new SharePosterior(judged, 12, counts).decibansAgainst())
        .isCloseTo(10 * (log - card) / Math.log(10), within(1e-9));
  }

  /** A true judgement is spoken against by 10 dB in at most one of ten repetitions. */
  @Test
  void a_true_judgement_is_seldom_spoken_against() {
    Random random = new Random(5);
    int against = 0;
    for (int i = 0; i < 4000; i++) {
      int hits = 0;
      for (int n = 0; n < 30; n++) {
        hits += random.nextDouble() < 0.2 ? 1 : 0;
      }
      SharePosterior posterior =
          new SharePosterior(new double[] {0.2, 0.8}, 20, new int[] {hits, 30 - hits});
      against += posterior.decibansAgainst() >= 10 ? 1 : 0;
    }
    assertThat(against).isLessThan(400);
  }

  @Test
  void no_cases_leave_the_judgement_as_it_is() {
    SharePosterior none = new SharePosterior(new double[] {0.3, 0.7}, 20, new int[2]);
    assertThat(none.mean(0)).isCloseTo(0.3, within(1e-12));
    assertThat(none.decibansAgainst()).isZero();
    assertThat(none.range(0).contains(0.3)).isTrue();
  }

  @Test
  void shares_that_are_none_are_refused() {
    assertThatThrownBy(() -> new SharePosterior(new double[] {0.5, 0.6}, 2, new int[2]))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SharePosterior(new double[] {1, 0}, 2, new int[2]))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
