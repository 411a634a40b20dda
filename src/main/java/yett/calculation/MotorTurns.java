package yett.calculation;

/**
 * Converts between chain travel and turns of the motor, which the controller counts: x = n N p/i
 * with n turns, N teeth of the drive sprocket, p pitch (m) and i turns of the motor for one of the
 * sprocket. Source: geometry of chain and sprocket.
 *
 * @param ratio i, motor turns for one turn of the sprocket
 * @param teeth N
 * @param pitch p, m
 * @throws IllegalArgumentException if one of them is not positive
 */
public record MotorTurns(double ratio, int teeth, double pitch) {
  public MotorTurns {
    Require.positive("gear ratio", ratio);
    Require.positive("teeth", teeth);
    Require.positive("pitch", pitch);
  }

  /** Chain travel (m) of one turn of the motor. */
  public double perTurn() {
    return Travel.perTurn(teeth, pitch) / ratio;
  }

  /**
   * Chain travel (m) for a number of motor turns.
   *
   * @throws IllegalArgumentException if the turns are negative
   */
  public double travel(double turns) {
    return Require.notNegative("motor turns", turns) * perTurn();
  }

  /**
   * Turns of the motor for a travel (m).
   *
   * @throws IllegalArgumentException if the travel is negative
   */
  public double turns(double travel) {
    return Require.notNegative("travel", travel) / perTurn();
  }

  /**
   * Speed of the leaf (m/s) at a motor speed. It is the mean: over one pitch the speed varies by
   * {@link #speedRipple}.
   *
   * @throws IllegalArgumentException if they are negative
   */
  public double speed(double turnsPerMinute) {
    return travel(turnsPerMinute) / 60;
  }

  /** How much the chain's speed falls within each pitch, as a share: 1 - cos(π/N). */
  public double speedRipple() {
    return 1 - Math.cos(Math.PI / teeth);
  }
}
