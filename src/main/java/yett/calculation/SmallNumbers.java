package yett.calculation;

import java.util.Arrays;
import org.apache.commons.math3.stat.interval.IntervalUtils;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Confidence intervals for few cases. Each covers the true value in at least about 95 of 100
 * repetitions.
 */
public final class SmallNumbers {
  private static final double COVER = 0.95;

  private SmallNumbers() {}

  /**
   * The interval of a share that was observed as {@code hits} of {@code all}: Wilson's score
   * interval, without continuity correction (E. B. Wilson, J. Amer. Statist. Assoc. 22 (1927)
   * 209–212).
   *
   * @throws IllegalArgumentException unless 0 ≤ hits ≤ all and all ≥ 1
   */
  public static Range share(int hits, int all) {
    var interval = IntervalUtils.getWilsonScoreInterval(all, hits, COVER);
    return new Range(
        hits == 0 ? 0 : interval.getLowerBound(), hits == all ? 1 : interval.getUpperBound());
  }

  /**
   * The interval of the expected number of events in a period in which {@code count} happened: the
   * exact interval for a Poisson mean (F. Garwood, Biometrika 28 (1936) 437–442), by way of
   * chi-squared.
   *
   * @throws IllegalArgumentException if the count is negative
   */
  public static Range mean(int count) {
    if (count < 0) {
      throw new IllegalArgumentException("no count: " + count);
    }
    double tail = (1 - COVER) / 2;
    double low =
        count == 0
            ? 0
            : ChiSquaredDistribution.of(2.0 * count).inverseCumulativeProbability(tail) / 2;
    double high = ChiSquaredDistribution.of(2.0 * (count + 1)).inverseSurvivalProbability(tail) / 2;
    return new Range(low, high);
  }

  /** The median. */
  public static double median(double... values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }

  /**
   * The interval of the median, from the binomial distribution of how many values fall below it; it
   * does not depend on the distribution of the values. With fewer than six values the range is
   * infinite.
   */
  public static Range medianRange(double... values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int rank = lowerRank(sorted.length);
    return rank == 0
        ? new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
        : new Range(sorted[rank - 1], sorted[sorted.length - rank]);
  }

  /**
   * The greatest r for which the interval between the r-th values from either end has the coverage;
   * 0 if none has.
   */
  static int lowerRank(int n) {
    if (n == 0) {
      return 0;
    }
    var below = BinomialDistribution.of(n, 0.5);
    int rank = 0;
    while (rank < n / 2 && below.cumulativeProbability(rank) <= (1 - COVER) / 2) {
      rank++;
    }
    return rank;
  }
}
