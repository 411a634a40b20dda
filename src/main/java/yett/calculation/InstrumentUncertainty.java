package yett.calculation;

import java.util.Arrays;

/**
 * Calculates the standard uncertainty of a reading from the limits in the instrument's data sheet
 * and what the procedure adds. All values are in the unit of the reading. Source: JCGM 100 (GUM).
 */
public final class InstrumentUncertainty {
  private InstrumentUncertainty() {}

  /**
   * The limit ±a that a data sheet sets: percent of the reading plus a number of counts of the last
   * digit.
   *
   * @param resolution value of one count, in the unit of the reading
   * @throws IllegalArgumentException if percent, counts or resolution is negative
   */
  public static double limit(double reading, double percent, double counts, double resolution) {
    Require.finite("reading", reading);
    Require.notNegative("percent", percent);
    Require.notNegative("counts", counts);
    Require.notNegative("resolution", resolution);
    return Math.abs(reading) * percent / 100 + counts * resolution;
  }

  /**
   * Standard uncertainty of a reading anywhere within the {@link #limit} with equal chance: a/√3
   * (JCGM 100, 4.3.7).
   *
   * @throws IllegalArgumentException as {@link #limit}
   */
  public static double standard(double reading, double percent, double counts, double resolution) {
    return standard(limit(reading, percent, counts, resolution));
  }

  /**
   * Standard uncertainty of a reading anywhere within ±limit with equal chance: a/√3 (JCGM 100,
   * 4.3.7).
   *
   * @throws IllegalArgumentException if the limit is negative
   */
  public static double standard(double limit) {
    return Require.notNegative("limit", limit) / Math.sqrt(3);
  }

  /**
   * Standard uncertainties combined: the root of the sum of their squares. Only for parts that do
   * not depend on one another: two readings on one range share the meter's gain error.
   *
   * @throws IllegalArgumentException if one is negative
   */
  public static double combined(double... standardUncertainties) {
    return Math.sqrt(
        Arrays.stream(standardUncertainties)
            .map(u -> Require.notNegative("standard uncertainty", u))
            .map(u -> u * u)
            .sum());
  }
}
