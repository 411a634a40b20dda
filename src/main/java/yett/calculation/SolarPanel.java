package yett.calculation;

/** Calculates what a solar panel supplies that charges 24 V batteries, from its rated power (W). */
public final class SolarPanel {
  /**
   * Voltage (V) of a panel for 24 V batteries at its rated power: panel data sheets, from memory.
   */
  private static final double VOLTS = 34;

  /**
   * Current from a winter noon to the best sun, as shares of the rated current; common practice.
   */
  private static final Range SUN = new Range(0.5, 1.15);

  /** Hours of full sun on a dark day: common practice. */
  private static final double DARK_DAY = 2;

  /** Share of the panel's energy that reaches the batteries: common practice. */
  private static final double STORED = 0.7;

  /** Standing current (A) of a gate that is designed for solar supply: common practice. */
  private static final double STANDING = 0.04;

  private SolarPanel() {}

  /** Current (A) at rated power. */
  public static double current(double power) {
    return power / VOLTS;
  }

  /**
   * Usual short-circuit current (A); in the best sun it is over a tenth above the current at rated
   * power.
   */
  public static Range shortCircuit(double power) {
    return new Range(SUN.low() * current(power), SUN.high() * current(power));
  }

  /**
   * Share of a day's consumption that the panel covers on a dark day: the energy stored from two
   * hours of full sun, divided by that of cycles and standing current. See {@link DayOfCycles}.
   *
   * @param cycles of opening and closing
   * @param current of the running motor, A
   * @param seconds of one run
   * @throws IllegalArgumentException if an argument is negative
   */
  public static double coveredOnADarkDay(
      double power, double cycles, double current, double seconds) {
    double cycle = DayOfCycles.cycle(current, 2 * seconds);
    return DayOfCycles.harvest(power, DARK_DAY, STORED)
        / (MainsLoad.MOTOR_VOLTS * DayOfCycles.drawn(cycles, cycle, STANDING));
  }
}
