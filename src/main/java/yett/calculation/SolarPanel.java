package yett.calculation;

/** What a solar panel gives that charges 24 V batteries, by its power (W). */
public final class SolarPanel {
  /** V at which a panel for 24 V batteries gives its power: panel data sheets, from memory. */
  private static final double VOLTS = 34;

  /** A winter noon to the best sun, as shares of its current; common practice. */
  private static final Range SUN = new Range(0.5, 1.15);

  /** Hours of full sun on a dark day: common practice. */
  private static final double DARK_DAY = 2;

  /** Share of it that gets into the batteries: common practice. */
  private static final double STORED = 0.7;

  /** A that a gate chosen for the sun draws standing: common practice. */
  private static final double STANDING = 0.04;

  private SolarPanel() {}

  /** Current (A) at its power. */
  public static double current(double power) {
    return power / VOLTS;
  }

  /** Current (A) into a short circuit, a tenth and more above that at its power in the best sun. */
  public static Range shortCircuit(double power) {
    return new Range(SUN.low() * current(power), SUN.high() * current(power));
  }

  /**
   * What share of a day's draw it covers on a dark day: what two hours of full sun put into the
   * batteries, over cycles and standing current. Balance of energy, see {@link DayOfCycles}.
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
