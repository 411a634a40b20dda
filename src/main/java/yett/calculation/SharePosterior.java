package yett.calculation;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * What is to be thought of some shares that add up to 1, after a judgement and some counts: the
 * Dirichlet distribution is conjugate to multinomial counts, so the judgement weighs like so many
 * cases seen before (D. J. Spiegelhalter and S. L. Lauritzen, Sequential updating of conditional
 * probabilities on directed graphical structures, Networks 20 (1990) 579–605; from memory). Each
 * share alone then has a Beta distribution.
 *
 * @param judged shares that were judged, adding up to 1, none of them 0
 * @param weight so many cases the judgement weighs
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

  /** Where a share lies with 95 in 100, each tail alike. */
  public Range range(int share) {
    double own = weight * judged[share] + counts[share];
    BetaDistribution beta = BetaDistribution.of(own, weight + cases() - own);
    double tail = (1 - COVER) / 2;
    return new Range(
        beta.inverseCumulativeProbability(tail), beta.inverseSurvivalProbability(tail));
  }

  /**
   * How far the counts speak for shares that are to be learnt, against those judged being right as
   * they stand: the ratio of what each said beforehand of these very counts, in decibans (I. J.
   * Good). If the judgement is right, it exceeds 10 in at most one of ten repetitions.
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
