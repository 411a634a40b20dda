package yett.calculation;

/**
 * Calculates how a moving leaf comes to rest, and its force on an obstruction. Mass (kg), speed
 * (m/s), force (N), time (s), distance (m), stiffness (N/m). Source: mechanics textbooks.
 */
public final class Stopping {
  private Stopping() {}

  /**
   * How far (m) a gate usually coasts from a speed: v t + v²/(2 a), from 0.1 s and 1.5 m/s² for a
   * brisk stop to 0.3 s and 0.5 m/s² for a soft one. Common practice for delay and deceleration.
   *
   * @throws IllegalArgumentException if the speed is negative
   */
  public static Range usualCoasting(double speed) {
    Require.notNegative("speed", speed);
    return new Range(
        speed * 0.1 + speed * speed / (2 * 1.5), speed * 0.3 + speed * speed / (2 * 0.5));
  }

  /**
   * Distance (m) from the command to rest: v t + m v²/(2 F).
   *
   * @param brakingForce of brake and rolling resistance together
   * @param delay from the command until the force acts
   * @throws IllegalArgumentException if mass or force is not positive, speed or delay negative
   */
  public static double distance(double mass, double speed, double brakingForce, double delay) {
    Require.notNegative("delay", delay);
    return speed * delay
        + Leaf.kineticEnergy(mass, Require.notNegative("speed", speed))
            / Require.positive("braking force", brakingForce);
  }

  /**
   * Time (s) from the command to rest: t + m v/F.
   *
   * @throws IllegalArgumentException as {@link #distance}
   */
  public static double time(double mass, double speed, double brakingForce, double delay) {
    Require.positive("mass", mass);
    Require.notNegative("speed", speed);
    return Require.notNegative("delay", delay)
        + mass * speed / Require.positive("braking force", brakingForce);
  }

  /**
   * Mean force (N) on whatever stops the leaf within a distance: m v²/(2 x), the drive switched
   * off.
   *
   * @throws IllegalArgumentException if mass or distance is not positive, the speed not finite
   */
  public static double meanForce(double mass, double speed, double distance) {
    return Leaf.kineticEnergy(mass, speed) / Require.positive("distance", distance);
  }

  /**
   * Peak force (N) of a leaf that runs against a spring: v √(k m), the drive switched off. The
   * meter of EN 12453 is 500 000 N/m; a soft edge may be a tenth of it.
   *
   * @throws IllegalArgumentException if mass or stiffness is not positive or the speed negative
   */
  public static double peakForce(double mass, double speed, double stiffness) {
    Require.positive("mass", mass);
    Require.positive("stiffness", stiffness);
    return Require.notNegative("speed", speed) * Math.sqrt(stiffness * mass);
  }
}
