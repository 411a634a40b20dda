package yett.calculation;

/**
 * How long a leaf travels and how far its chain moves it. Distance (m), speed (m/s), acceleration
 * and deceleration (m/s², both as positive numbers), time (s). Source: uniform acceleration;
 * geometry of chain and sprocket.
 */
public final class Travel {
  private Travel() {}

  /**
   * Time (s) to cover a distance from rest to rest: D/v + (v/2)(1/a + 1/d), or √(2 D (1/a + 1/d))
   * if the way is too short to reach the speed.
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
   * Time (s) for a travel that slows to a creep before its end and stops from the creep at once.
   *
   * @param distance the whole way, creep included
   * @param creepDistance the last part, all of it at creep speed
   * @throws IllegalArgumentException if an argument is not positive, the creep is not slower than
   *     the speed, or the way before the creep is too short to reach the speed and slow down again
   */
  public static double timeWithCreep(
      double distance,
      double speed,
      double acceleration,
      double deceleration,
      double creepDistance,
      double creepSpeed) {
    Require.positive("distance", distance);
    Require.positive("speed", speed);
    Require.positive("acceleration", acceleration);
    Require.positive("deceleration", deceleration);
    Require.positive("creep distance", creepDistance);
    Require.positive("creep speed", creepSpeed);
    Require.positive("speed above creep speed", speed - creepSpeed);
    double rampDistance =
        speed * speed / (2 * acceleration)
            + (speed * speed - creepSpeed * creepSpeed) / (2 * deceleration);
    double cruise =
        Require.notNegative("distance at full speed", distance - creepDistance - rampDistance);
    return speed / acceleration
        + cruise / speed
        + (speed - creepSpeed) / deceleration
        + creepDistance / creepSpeed;
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
   * How far (m) a leaf may stand off its taught limits once n links were taken out at one bracket:
   * up to n p. The limits are counted in turns of the sprocket, hence along the chain; the bracket
   * that lost the links stands nearer to the sprocket at the same count, by what was removed less
   * what came out of the slack on that side. Source: geometry.
   *
   * @throws IllegalArgumentException if links or pitch is not positive
   */
  public static double limitShift(int linksRemoved, double pitch) {
    return Require.positive("links removed", linksRemoved) * Require.positive("pitch", pitch);
  }
}
