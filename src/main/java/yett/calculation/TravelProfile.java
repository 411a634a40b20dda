package yett.calculation;

/**
 * One run of a leaf with slow zones at its ends. It accelerates to the slow speed, crosses the
 * first zone, accelerates to full speed, slows down, crosses the last zone and stops at once from
 * slow speed. Distances in m, speeds in m/s, accelerations in m/s² as positive numbers. Source:
 * uniform acceleration.
 *
 * @param distance the whole travel, zones included
 * @param slowStart length of the slow zone it begins with; 0 if it accelerates to full speed from
 *     rest
 * @param slowEnd length of the slow zone it ends with; 0 if it brakes from full speed to rest
 * @param slowSpeed in both zones; ignored if both zones are 0
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
   *     speed, a zone too short to reach the slow speed in, or the distance between the zones too
   *     short for full speed
   */
  public TravelProfile {
    Require.positive("distance", distance);
    Require.positive("speed", speed);
    Require.positive("acceleration", acceleration);
    Require.positive("deceleration", deceleration);
    Require.notNegative("slow zone at the start", slowStart);
    Require.notNegative("slow zone at the end", slowEnd);
    if (slowStart > 0 || slowEnd > 0) {
      Require.positive("slow speed", slowSpeed);
      Require.positive("speed above slow speed", speed - slowSpeed);
    }
    if (slowStart > 0) {
      Require.notNegative(
          "slow zone beyond the start", slowStart - ramp(0, slowSpeed, acceleration));
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
