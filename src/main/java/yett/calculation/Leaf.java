package yett.calculation;

/**
 * Calculates the forces and motor current of a gate leaf that rolls along its track. Mass m (kg),
 * coefficient of rolling resistance c (clean track 0.01 to 0.02, worn or dirty 0.03 to 0.05, common
 * practice), grade as rise over run, positive uphill, force (N), speed (m/s). Standard gravity.
 * Source: mechanics textbooks. A bent track or a dragging guide shows as c above 0.06; wind acts
 * across the travel and is not in it.
 */
public final class Leaf {
  /** c of a leaf on wheels in a clean track: common practice. */
  public static final Range TRACK_RESISTANCE = new Range(0.01, 0.03);

  /**
   * c of a cantilevered leaf: hanging out over the opening by about 0.3 of it before rollers 0.4 of
   * it apart, it loads them with 1.75 + 0.75 times its weight; 0.02 of that is 0.05 of the weight.
   * Statics; common practice for the rollers.
   */
  public static final Range CANTILEVER_RESISTANCE = new Range(0.01, 0.05);

  /**
   * Ratio of the rolling resistance at the start to that under way: common practice. The part of
   * the force due to a slope is the same in both.
   */
  public static final Range BREAKAWAY = new Range(1.5, 2.5);

  /** Current (A) that a 24 V gear motor takes to turn itself under way: common practice. */
  public static final Range IDLE_CURRENT = new Range(1.5, 2.5);

  /** Efficiency of motor, gear and chain together: common practice. */
  public static final Range EFFICIENCY = new Range(0.35, 0.6);

  /** Length of a leaf divided by its usual bow; considered judgement. */
  private static final double BOW = 300;

  /**
   * Opening divided by how far the nose of a cantilevered leaf sinks through play in its rollers;
   * considered judgement.
   */
  private static final double NOSE = 200;

  private Leaf() {}

  /** How far (m) a leaf of this length (m) is usually out of straight, at most. */
  public static double usualBow(double length) {
    return length / BOW;
  }

  /** How far (m) the nose of a cantilevered leaf usually sinks, at most, for an opening (m). */
  public static double usualNoseDrop(double opening) {
    return opening / NOSE;
  }

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
   * Force (N) from the lowest to the highest usual resistance; see {@link #rollingForce}.
   *
   * @throws IllegalArgumentException if the mass is not positive
   */
  public static Range usualForce(double mass, Range rollingResistance, double grade) {
    return new Range(
        rollingForce(mass, rollingResistance.low(), grade),
        rollingForce(mass, rollingResistance.high(), grade));
  }

  /**
   * Force (N) that sets the leaf in motion, from the lowest to the highest usual one: m g (b c cos
   * a + sin a) with b from {@link #BREAKAWAY}.
   *
   * @throws IllegalArgumentException as {@link #usualForce}
   */
  public static Range breakawayForce(double mass, Range rollingResistance, double grade) {
    return usualForce(
        mass,
        new Range(
            BREAKAWAY.low() * rollingResistance.low(), BREAKAWAY.high() * rollingResistance.high()),
        grade);
  }

  /**
   * Rolling resistance of a leaf that a force keeps rolling: (F/(m g) - sin a)/cos a, the inverse
   * of {@link #rollingForce}. Negative if the leaf needs less than its own share of the slope: then
   * mass, grade or reading is wrong.
   *
   * @param force read on a spring scale, along the travel
   * @throws IllegalArgumentException if the mass is not positive or the force negative
   */
  public static double rollingResistance(double mass, double force, double grade) {
    Require.notNegative("force", force);
    double angle = Math.atan(Require.finite("grade", grade));
    double share = force / (Require.positive("mass", mass) * Gravity.STANDARD);
    return (share - Math.sin(angle)) / Math.cos(angle);
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
   * Usual motor current (A) for a range of forces: that of the motor alone, and F v/(η V) on top at
   * the best and at the poorest usual efficiency.
   *
   * @throws IllegalArgumentException as {@link #motorCurrent}
   */
  public static Range usualCurrent(Range force, double speed, double voltage) {
    return new Range(
        IDLE_CURRENT.low() + motorCurrent(force.low(), speed, EFFICIENCY.high(), voltage),
        IDLE_CURRENT.high() + motorCurrent(force.high(), speed, EFFICIENCY.low(), voltage));
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
