package yett.calculation;

/** Calculates the mains current of an operator whose motor runs while its batteries are charged. */
public final class MainsLoad {
  /** Voltage (V) of the motor and of the pair of batteries. */
  public static final double MOTOR_VOLTS = 24;

  /** Power (W) of battery charging, in addition to the motor: 4 A at 30 V, common practice. */
  public static final double CHARGING = 120;

  /**
   * Direct-current power delivered by a supply, as a share of the volt-amperes it draws; considered
   * judgement.
   */
  public static final double EFFICIENCY = 0.75;

  private MainsLoad() {}

  /**
   * Current (A) at the mains: (24 V I + Pc)/(η V). One phase; the power factor is part of the
   * efficiency.
   *
   * @param motorCurrent I, A of direct current
   * @param charging Pc, W
   * @param efficiency η, over 0 up to 1
   * @param mains V
   * @throws IllegalArgumentException if a value is out of range
   */
  public static double current(
      double motorCurrent, double charging, double efficiency, double mains) {
    Require.notNegative("motor current", motorCurrent);
    Require.notNegative("charging power", charging);
    Require.positive("efficiency", efficiency);
    Require.between("efficiency", efficiency, 0, 1);
    return (MOTOR_VOLTS * motorCurrent + charging)
        / (efficiency * Require.positive("mains voltage", mains));
  }
}
