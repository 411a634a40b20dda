package yett.calculation;

/**
 * A photo-electric beam from a sender to a receiver. Distances in m, angles in degrees. Excess gain
 * is the light received over the light needed to switch.
 */
public final class PhotoBeam {
  private PhotoBeam() {}

  /**
   * Excess gain: (Rmax/R)² T, as light weakens with the square of the distance. Optics, beyond the
   * near field of the lens.
   *
   * @param range Rmax at which a clean pair just works
   * @param transmission T, share of the light that the windows together let through, over 0 up to 1
   * @throws IllegalArgumentException if a distance is not positive or the transmission out of range
   */
  public static double excessGain(double range, double distance, double transmission) {
    double ratio = Require.positive("range", range) / Require.positive("distance", distance);
    Require.positive("transmission", transmission);
    return ratio * ratio * Require.between("transmission", transmission, 0, 1);
  }

  /**
   * How far (m) a beam lands off the receiver when its sender is turned: R tan θ. Geometry.
   *
   * @throws IllegalArgumentException if the distance is not positive or the angle not under 90
   */
  public static double offset(double distance, double angle) {
    Require.positive("distance", distance);
    return distance * Math.tan(Math.toRadians(Require.between("angle", angle, 0, 89)));
  }

  /**
   * The angle (degrees) by which a beam that lands off the receiver is turned: the inverse of
   * {@link #offset}.
   *
   * @throws IllegalArgumentException if the distance is not positive or the offset negative
   */
  public static double angle(double distance, double offset) {
    Require.notNegative("offset", offset);
    return Math.toDegrees(Math.atan(offset / Require.positive("distance", distance)));
  }
}
