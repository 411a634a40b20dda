package yett.calculation;

/**
 * A gate leaf rolling along its track. Mass m (kg), coefficient of rolling resistance c (clean
 * track 0.01 to 0.02, worn or dirty 0.03 to 0.05, common practice), grade as rise over run,
 * positive uphill, force (N), speed (m/s). Standard gravity. Source: mechanics textbooks. A bent
 * track or a dragging guide shows as c above 0.06; wind acts across the travel and is not in it.
 */
public final class Leaf {
  private Leaf() {}

  /**
   * Force (N) to keep the leaf rolling: m g (c cos a + sin a), tan a = grade. Negative if the leaf
   * runs downhill by itself.
   *
   * @throws IllegalArgumentException if the mass is not positive or the coefficient negative
   */
  public static double rollingForce(double mass, double rollingResistance, double grade) {
    Require.positive("mass", mass);
    Require.notNegative("rolling resistance", rollingResistance);
    double angle = Math.atan(Require.finite("grade", grade));
    return mass * Gravity.STANDARD * (rollingResistance * Math.cos(angle) + Math.sin(angle));
  }

  /**
   * The grade beyond which a free leaf moves by itself: equal to the rolling resistance, since m g
   * c cos a = m g sin a where tan a = c.
   *
   * @throws IllegalArgumentException if the coefficient is negative
   */
  public static double selfMovingGrade(double rollingResistance) {
    return Require.notNegative("rolling resistance", rollingResistance);
  }

  /**
   * Motor current (A) to pull with a force at a speed: F v/(η V), steady and direct current.
   *
   * @param efficiency motor, gear and chain together, over 0 up to 1; 0.35 to 0.6 in common
   *     practice
   * @throws IllegalArgumentException if force or speed is negative, the efficiency out of range or
   *     the voltage not positive
   */
  public static double motorCurrent(double force, double speed, double efficiency, double voltage) {
    Require.notNegative("force", force);
    Require.notNegative("speed", speed);
    Require.positive("efficiency", efficiency);
    Require.between("efficiency", efficiency, 0, 1);
    return force * speed / (efficiency * Require.positive("voltage", voltage));
  }

  /**
   * Kinetic energy (J): m v²/2.
   *
   * @throws IllegalArgumentException if the mass is not positive or the speed not finite
   */
  public static double kineticEnergy(double mass, double speed) {
    return Require.positive("mass", mass) * Require.finite("speed", speed) * speed / 2;
  }
}
