package yett.calculation;

/**
 * Calculates the charge that a gate takes from its batteries in a day, and what a charger or the
 * sun puts back. A cycle is one opening and one closing. Charge in Ah, energy in Wh, current in A,
 * voltage in V, time in s for a cycle and in h for a day. Source: balance of charge and of energy,
 * textbook.
 */
public final class DayOfCycles {
  private static final double HOURS = 24;

  private DayOfCycles() {}

  /**
   * Charge (Ah) of a cycle: I t/3600.
   *
   * @param seconds that the motor runs in opening and closing together
   * @throws IllegalArgumentException if an argument is negative
   */
  public static double cycle(double current, double seconds) {
    return Require.notNegative("current", current) * Require.notNegative("time", seconds) / 3600;
  }

  /**
   * Charge (Ah) taken in a day: n q + 24 Is, with q of a {@link #cycle} and the standing current
   * Is.
   *
   * @throws IllegalArgumentException if an argument is negative
   */
  public static double drawn(double cycles, double cycle, double standing) {
    Require.notNegative("cycles", cycles);
    Require.notNegative("charge of a cycle", cycle);
    return cycles * cycle + HOURS * Require.notNegative("standing current", standing);
  }

  /**
   * Energy (Wh) that panels store in a day: P h η.
   *
   * @param panel W, as rated at 1000 W/m2
   * @param sunHours hours of 1000 W/m2 that give a day's sunshine
   * @param share of it that reaches the battery, after heat, dirt, wiring, controller and charging
   * @throws IllegalArgumentException if an argument is negative, or the share above 1
   */
  public static double harvest(double panel, double sunHours, double share) {
    Require.between("share", share, 0, 1);
    return Require.notNegative("panel power", panel)
        * Require.notNegative("sun hours", sunHours)
        * share;
  }

  /**
   * Cycles a day that a supply is good for: (supply - standing draw)/(one cycle); 0 if the standing
   * draw takes it all.
   *
   * @param given what a day supplies, in the unit of the other two
   * @throws IllegalArgumentException if the cycle is not positive
   */
  public static double carried(double given, double standing, double cycle) {
    return Math.max(0, given - standing) / Require.positive("draw of a cycle", cycle);
  }
}
