package yett.calculation;

/**
 * Resistance to earth of driven rods in uniform soil. Resistivity ρ (ohm m), length in the soil L
 * (m), <em>radius</em> a (m), spacing s (m); resistance in ohm. Sources: H. B. Dwight 1936, in IEEE
 * 142; MIL-HDBK-419A. Soil varies with place, season and frost: ±50 % is normal.
 */
public final class EarthRod {
  private static final double[] RODS = {1, 2, 3, 4, 8, 12, 16, 20, 24};
  private static final double[] FACTORS = {1, 1.16, 1.29, 1.36, 1.68, 1.80, 1.92, 2.00, 2.16};

  private EarthRod() {}

  /**
   * One rod: ρ/(2 π L) (ln(4 L/a) - 1), for a rod much longer than thick.
   *
   * @throws IllegalArgumentException if an argument is not positive, or the rod not ten times
   *     longer than its radius
   */
  public static double single(double resistivity, double length, double radius) {
    Require.positive("resistivity", resistivity);
    requireSlender(length, radius);
    return resistivity * shape(length, radius);
  }

  /**
   * Soil resistivity (ohm m) in which one rod has a resistance: the inverse of {@link #single}.
   *
   * @throws IllegalArgumentException as {@link #single}
   */
  public static double resistivity(double resistance, double length, double radius) {
    Require.positive("resistance", resistance);
    requireSlender(length, radius);
    return resistance / shape(length, radius);
  }

  private static double shape(double length, double radius) {
    return (Math.log(4 * length / radius) - 1) / (2 * Math.PI * length);
  }

  private static void requireSlender(double length, double radius) {
    Require.positive("length", length);
    Require.positive("radius", radius);
    Require.positive("length over ten times the radius", length - 10 * radius);
  }

  /**
   * Two equal rods joined together, as a fraction of one of them: (1 + M/S)/2 with S = 2 (ln(4 L/a)
   * - 1) and M = 2 arsinh(2 L/s) - √(4 + (s/L)²) + s/L. The mean potential of evenly fed rods, as
   * in Dwight's single rod; the two series that handbooks print for close and for distant rods are
   * its expansions, and each is off on the other side.
   *
   * @throws IllegalArgumentException as {@link #single}, or if the spacing is not over twice the
   *     radius
   */
  public static double pairOverSingle(double length, double radius, double spacing) {
    requireSlender(length, radius);
    Require.positive("spacing over twice the radius", spacing - 2 * radius);
    double own = 2 * (Math.log(4 * length / radius) - 1);
    double x = spacing / length;
    double arsinh = Math.log(2 / x + Math.hypot(2 / x, 1));
    double mutual = 2 * arsinh - Math.hypot(2, x) + x;
    return (1 + mutual / own) / 2;
  }

  /**
   * Several equal rods in a line, ring or square, one length apart: F/n of one. Multiplying factors
   * of IEEE 142, from memory, straight lines between its rows.
   *
   * @param rods from 1 to 24
   * @throws IllegalArgumentException outside that
   */
  public static double severalOverSingle(int rods) {
    Require.between("rods", rods, 1, 24);
    return Interpolation.at(rods, RODS, FACTORS) / rods;
  }
}
