package yett.calculation;

/**
 * Calculates the force of wind on the broad side of a leaf. Wind speed V (m/s), pressure q (Pa),
 * area (m²), force (N).
 *
 * <p>It acts across the travel: guides and posts take it, and it loads the drive only through their
 * friction. If the leaf is off its guides, the whole force tends to turn it over. Sources: ASCE 7
 * (velocity pressure; force coefficients of open signs and lattice frames, table 29.4-2); the solid
 * panel's 1.3 is from memory of its figure 29.3-1. Good for a gust speed read at the gate; design
 * for wind is a structural engineer's work and has more factors.
 */
public final class Wind {
  /** A leaf with at least this share of its outline filled counts as solid: ASCE 7, 30 % open. */
  public static final double SOLID = 0.7;

  /**
   * Friction of the guides, from rollers that turn to guides that drag: 0.05 to 0.25, common
   * practice.
   */
  public static final Range GUIDE_FRICTION = new Range(0.05, 0.25);

  private Wind() {}

  /**
   * Velocity pressure (Pa): q = 0.613 V², half of the density of air at sea level times V².
   *
   * @throws IllegalArgumentException if the speed is negative
   */
  public static double pressure(double speed) {
    return 0.613 * Require.notNegative("wind speed", speed) * speed;
  }

  /**
   * Force coefficient of flat members for a solidity φ, the filled share of the outline: 2.0 below
   * 0.1, 1.8 below 0.3, 1.6 up to 0.7, 1.3 for a solid leaf.
   *
   * @throws IllegalArgumentException if the solidity is not over 0 up to 1
   */
  public static double coefficient(double solidity) {
    Require.positive("solidity", solidity);
    Require.between("solidity", solidity, 0, 1);
    if (solidity < 0.1) {
      return 2.0;
    }
    return solidity < 0.3 ? 1.8 : solidity < SOLID ? 1.6 : 1.3;
  }

  /**
   * Force (N) across the leaf: q C A φ, or q C A for a solid leaf.
   *
   * @param area of the outline, m²
   * @throws IllegalArgumentException if the speed is negative, the area not positive or the
   *     solidity out of range
   */
  public static double force(double speed, double area, double solidity) {
    Require.positive("area", area);
    double coefficient = coefficient(solidity);
    return pressure(speed) * coefficient * area * (solidity < SOLID ? solidity : 1);
  }

  /**
   * Force (N) that the drive needs in addition: the friction of the guides that take the wind.
   *
   * @throws IllegalArgumentException if force or friction is negative
   */
  public static double addedDriveForce(double force, double guideFriction) {
    return Require.notNegative("wind force", force)
        * Require.notNegative("guide friction", guideFriction);
  }
}
