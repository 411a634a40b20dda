package yett.calculation;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Splits a reading among the bands of a check in proportion to where the true value may lie. With
 * reading x and standard uncertainty u, the band from lo to hi weighs Φ((hi - x)/u) - Φ((lo -
 * x)/u): a reading near a limit counts for the bands on both sides.
 */
public final class BandWeights {
  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  private BandWeights() {}

  /**
   * The weights of the bands below, between and above the limits, from the lowest; they sum to 1.
   * With no uncertainty the band that holds the reading takes all; a reading on a limit belongs to
   * the band above it.
   *
   * @param limits rising; one fewer than there are bands; in the unit of the reading
   * @throws IllegalArgumentException if reading or limits are not finite, the limits do not rise or
   *     the uncertainty is negative
   */
  public static double[] of(double reading, double standardUncertainty, double... limits) {
    Require.finite("reading", reading);
    Require.notNegative("standard uncertainty", standardUncertainty);
    requireRising(limits);
    double[] weights = new double[limits.length + 1];
    double from = Double.NEGATIVE_INFINITY;
    for (int band = 0; band < weights.length; band++) {
      double to = band < limits.length ? limits[band] : Double.POSITIVE_INFINITY;
      weights[band] = weight(reading, standardUncertainty, from, to);
      from = to;
    }
    return weights;
  }

  private static double weight(double reading, double u, double from, double to) {
    if (u == 0) {
      return reading >= from && reading < to ? 1 : 0;
    }
    return STANDARD.probability((from - reading) / u, (to - reading) / u);
  }

  private static void requireRising(double[] limits) {
    double before = Double.NEGATIVE_INFINITY;
    for (double limit : limits) {
      Require.finite("limit", limit);
      if (limit <= before) {
        throw new IllegalArgumentException("limits must rise, but " + limit + " follows " + before);
      }
      before = limit;
    }
  }
}
