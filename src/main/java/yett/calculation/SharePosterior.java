package yett.calculation;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The estimate of shares that add up to 1, from a judgement and counted cases. The Dirichlet
 * distribution is conjugate to multinomial counts, so the judgement counts like a number of cases
 * seen before (D. J. Spiegelhalter and S. L. Lauritzen, Sequential updating of conditional
 * probabilities on directed graphical structures, Networks 20 (1990) 579–605; from memory). Each
 * share alone then has a Beta distribution.
 *
 * @param judged shares that were judged, adding up to 1, none of them 0
 * @param weight number of cases that the judgement is worth
 * @param counts how often each was seen
 */
public record SharePosterior(double[] judged, double weight, int[] counts) {
  private static final double COVER = 0.95;

  /**
   * @throws IllegalArgumentException if the shares do not add up to 1, or are not above 0, or there
   *     are not as many counts
   */
  public SharePosterior {
    double sum = Arrays.stream(judged).sum();
    boolean sound =
        judged.length == counts.length
            && Math.abs(sum - 1) < 1e-6
            && Arrays.stream(judged).allMatch(p -> p > 0)
            && Arrays.stream(counts).allMatch(n -> n >= 0)
            && weight > 0;
    if (!sound) {
      throw new IllegalArgumentException(
          "no shares: " + Arrays.toString(judged) + ", " + Arrays.toString(counts));
    }
    judged = judged.clone();
    counts = counts.clone();
  }

  /** How many cases were counted. */
  public int cases() {
    return Arrays.stream(counts).sum();
  }

  /** Expected value of a share. */
  public double mean(int share) {
    return (weight * judged[share] + counts[share]) / (weight + cases());
  }

  /** The central 95 % interval of a share, with 2.5 % in each tail. */
  public Range range(int share) {
    double own = weight * judged[share] + counts[share];
    BetaDistribution beta = BetaDistribution.of(own, weight + cases() - own);
    double tail = (1 - COVER) / 2;
    return new Range(
        beta.inverseCumulativeProbability(tail), beta.inverseSurvivalProbability(tail));
  }

  /**
   * The evidence in the counts against the judged shares, in decibans (I. J. Good): the ratio of
   * the probability of these counts with shares still to be learnt to that with the judged shares
   * taken as exact. If the judgement is right, it exceeds 10 in at most one of ten repetitions.
   */
  public double decibansAgainst() {
    double ratio = 0;
    for (int i = 0; i < counts.length; i++) {
      for (int n = 0; n < counts[i]; n++) {
        ratio += Math.log(weight * judged[i] + n) - Math.log(judged[i]);
      }
    }
    for (int n = 0; n < cases(); n++) {
      ratio -= Math.log(weight + n);
    }
    return 10 * ratio / Math.log(10);
  }
}
