package yett.calculation;

/**
 * One run of a leaf with slow-downs at its ends. It accelerates to the slow speed, covers the first
 * slow-down, accelerates to full speed, slows down, covers the last one and stops at once from slow
 * speed. Distances in m, speeds in m/s, accelerations in m/s² as positive numbers. Source: uniform
 * acceleration.
 *
 * @param distance the whole travel, slow-downs included
 * @param slowStart length of the slow-down it begins with; 0 if it accelerates to full speed from
 *     rest
 * @param slowEnd length of the slow-down it ends with; 0 if it brakes from full speed to rest
 * @param slowSpeed in both slow-downs; ignored if both are 0
 */
public record TravelProfile(
    double distance,
    double speed,
    double acceleration,
    double deceleration,
    double slowStart,
    double slowEnd,
    double slowSpeed) {
  /**
   * @throws IllegalArgumentException if a number is out of its range, the slow speed not below the
   *     speed, a slow-down too short to reach the slow speed in, or the distance between the
   *     slow-downs too short for full speed
   */
  public TravelProfile {
    Require.positive("distance", distance);
    Require.positive("speed", speed);
    Require.positive("acceleration", acceleration);
    Require.positive("deceleration", deceleration);
    Require.notNegative("slow-down at the start", slowStart);
    Require.notNegative("slow-down at the end", slowEnd);
    if (slowStart > 0 || slowEnd > 0) {
      Require.positive("slow speed", slowSpeed);
      Require.positive("speed above slow speed", speed - slowSpeed);
    }
    if (slowStart > 0) {
      Require.notNegative(
          "slow-down beyond the start", slowStart - ramp(0, slowSpeed, acceleration));
    }
  }

  /** Time (s) of the run. */
  public double time() {
    if (slowStart == 0 && slowEnd == 0) {
      return Travel.time(distance, speed, acceleration, deceleration);
    }
    double entry = slowStart > 0 ? slowSpeed : 0;
    double exit = slowEnd > 0 ? slowSpeed : 0;
    double cruise =
        Require.notNegative(
            "distance at full speed",
            distance
                - slowStart
                - ramp(entry, speed, acceleration)
                - ramp(exit, speed, deceleration)
                - slowEnd);
    return startTime()
        + (speed - entry) / acceleration
        + cruise / speed
        + (speed - exit) / deceleration
        + (slowEnd > 0 ? slowEnd / slowSpeed : 0);
  }

  private double startTime() {
    return slowStart == 0
        ? 0
        : slowSpeed / acceleration + (slowStart - ramp(0, slowSpeed, acceleration)) / slowSpeed;
  }

  private static double ramp(double from, double to, double acceleration) {
    return (to * to - from * from) / (2 * acceleration);
  }
}
