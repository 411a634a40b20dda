package yett.calculation;

/**
 * Calculates how a leaf that is released from its drive moves on a grade. It stays where it is on a
 * grade below its rolling resistance c; on a steeper one it runs and accelerates all the way. Grade
 * as rise over run; its sign is ignored. Source: mechanics textbooks, inclined plane. ASTM F2200
 * wants no motion by gravity when the operator is disconnected.
 *
 * <p>All methods throw IllegalArgumentException if the resistance is negative or the grade not
 * finite.
 */
public final class ReleasedLeaf {
  /** Force (N) that one person can hold while walking; considered judgement. */
  public static final double HELD_BY_ONE = 250;

  private ReleasedLeaf() {}

  /** Acceleration downhill (m/s²): g (sin a - c cos a), tan a = grade; 0 if the leaf stays put. */
  public static double acceleration(double rollingResistance, double grade) {
    // rollingForce for 1 kg downhill is negative where the leaf runs by itself.
    return Math.max(0, -Leaf.rollingForce(1, rollingResistance, -Math.abs(grade)));
  }

  /**
   * Speed (m/s) after running a distance (m) from rest: √(2 a s).
   *
   * @throws IllegalArgumentException if the distance is negative
   */
  public static double speedAfter(double distance, double rollingResistance, double grade) {
    return Math.sqrt(
        2 * acceleration(rollingResistance, grade) * Require.notNegative("distance", distance));
  }

  /**
   * Time (s) to run a distance (m) from the release: √(2 s/a); infinite if it stays put.
   *
   * @throws IllegalArgumentException if the distance is not positive
   */
  public static double timeFor(double distance, double rollingResistance, double grade) {
    return Math.sqrt(
        2 * Require.positive("distance", distance) / acceleration(rollingResistance, grade));
  }

  /**
   * Force (N) that holds the leaf at rest: mass times its acceleration if free. Stopping it once it
   * runs takes far more, see {@link Stopping}.
   *
   * @throws IllegalArgumentException if the mass is not positive
   */
  public static double holdingForce(double mass, double rollingResistance, double grade) {
    return Require.positive("mass", mass) * acceleration(rollingResistance, grade);
  }
}
