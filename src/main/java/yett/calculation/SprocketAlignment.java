package yett.calculation;

/**
 * How far the faces of two sprockets, or of a sprocket and a guide wheel, may be out of line, and
 * how far their shafts may lean. Lengths in m. Source: Complete Guide to Chain, 7.1.2.2, fig. 7.7.
 */
public final class SprocketAlignment {
  /**
   * Multiple of {@link #permissibleOffset} up to which a chain below 0.5 m/s, as on gates, runs
   * well: a chain maker's guide allows 0.2 mm per 100 mm.
   */
  public static final double RUNS_WELL = 2;

  /** Multiple of it from which the chain climbs the teeth: considered judgement. */
  public static final double CLIMBS = 5;

  private static final double PERMISSIBLE_SLOPE = 1.0 / 300;

  private SprocketAlignment() {}

  /**
   * Permissible offset (m) to either side for a centre distance (m): 1 mm up to 1 m, a thousandth
   * of the distance from 1 m to 10 m, 10 mm above.
   *
   * @throws IllegalArgumentException if the distance is not positive
   */
  public static double permissibleOffset(double centreDistance) {
    Require.positive("centre distance", centreDistance);
    return Math.min(Math.max(0.001, centreDistance / 1000), 0.010);
  }

  /**
   * Permissible lean (m) of a shaft, out of level or out of parallel, read over a length (m) along
   * it: a three-hundredth of that length, to either side.
   *
   * @throws IllegalArgumentException if the length is not positive
   */
  public static double permissibleLean(double length) {
    return Require.positive("length along the shaft", length) * PERMISSIBLE_SLOPE;
  }

  /**
   * Angle (degrees) at which the chain leaves a sprocket that is out of line:
   * atan(offset/distance).
   *
   * @throws IllegalArgumentException if the distance is not positive or the offset negative
   */
  public static double chainAngle(double offset, double centreDistance) {
    Require.notNegative("offset", offset);
    return Math.toDegrees(Math.atan(offset / Require.positive("centre distance", centreDistance)));
  }
}
