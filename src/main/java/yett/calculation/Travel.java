package yett.calculation;

/**
 * Calculates how long a leaf travels and how far its chain moves it. Distance (m), speed (m/s),
 * acceleration and deceleration (m/s², both as positive numbers), time (s). Source: uniform
 * acceleration; geometry of chain and sprocket. Slow-downs at the ends: {@link TravelProfile}.
 */
public final class Travel {
  private Travel() {}

  /**
   * Time (s) to cover a distance from rest to rest: D/v + (v/2)(1/a + 1/d), or √(2 D (1/a + 1/d))
   * if the distance is too short to reach the speed.
   *
   * @throws IllegalArgumentException if an argument is not positive
   */
  public static double time(
      double distance, double speed, double acceleration, double deceleration) {
    Require.positive("distance", distance);
    Require.positive("speed", speed);
    double ramps =
        1 / Require.positive("acceleration", acceleration)
            + 1 / Require.positive("deceleration", deceleration);
    return distance >= speed * speed / 2 * ramps
        ? distance / speed + speed / 2 * ramps
        : Math.sqrt(2 * distance * ramps);
  }

  /**
   * Chain travel (m) for one turn of the drive sprocket: N p.
   *
   * @throws IllegalArgumentException if teeth or pitch is not positive
   */
  public static double perTurn(int teeth, double pitch) {
    return Require.positive("teeth", teeth) * Require.positive("pitch", pitch);
  }

  /**
   * How far (m) a leaf may stop off its taught limits after n links were removed at one bracket: up
   * to n p. The limits are counted in turns of the sprocket, so along the chain. At the same count
   * that bracket is nearer to the sprocket by the removed length, less what came out of the slack
   * on that side. Source: geometry.
   *
   * @throws IllegalArgumentException if links or pitch is not positive
   */
  public static double limitShift(int linksRemoved, double pitch) {
    return Require.positive("links removed", linksRemoved) * Require.positive("pitch", pitch);
  }

  /**
   * The usual time (s) of a full run: the distance at full speed, plus 2 s to 6 s for the
   * slow-downs (common practice).
   *
   * @throws IllegalArgumentException if distance or speed is not positive
   */
  public static Range usualTime(double distance, double speed) {
    double run = Require.positive("distance", distance) / Require.positive("speed", speed);
    return new Range(run + 2, run + 6);
  }

  /** Usual speed (m/s) in the middle of the travel: an eighth above or below the rated speed. */
  public static Range usualSpeed(double speed) {
    return new Range(0.88 * speed, 1.12 * speed);
  }
}
