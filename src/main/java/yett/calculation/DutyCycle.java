package yett.calculation;

/**
 * Calculates the load on a motor that runs and rests in turn. Times in s, currents in A. Source:
 * periodic duty as in IEC 60034-1; heat goes with the square of the current (textbook).
 */
public final class DutyCycle {
  /**
   * Classes of users after UL 325 and ASTM F2200. These standards sort gates by users, not by
   * cycles.
   */
  public enum Users {
    CLASS_1(10),
    CLASS_2(20),
    CLASS_3(30),
    CLASS_4(30);

    private final double usual;

    Users(double usual) {
      this.usual = usual;
    }

    /**
     * Cycles an hour for which operators of this class are usually built; considered judgement. The
     * nameplate takes precedence.
     */
    public double usualPerHour() {
      return usual;
    }
  }

  private DutyCycle() {}

  /**
   * The share of the time that the motor runs: n t/3600.
   *
   * @param perHour n cycles an hour
   * @param runTime t of opening and closing together
   * @throws IllegalArgumentException if one is negative, or they fill more than an hour
   */
  public static double share(double perHour, double runTime) {
    Require.notNegative("cycles an hour", perHour);
    Require.notNegative("run time", runTime);
    return Require.between("running share of the hour", perHour * runTime / 3600, 0, 1);
  }

  /**
   * The steady current that heats as much as a cycle does: √((2 Is² ts + I² (t - 2 ts)) / T). Two
   * starts in a cycle; T the time from cycle to cycle.
   *
   * @param start Is for ts at each of the two starts
   * @throws IllegalArgumentException if a time or current is negative, or the starts take longer
   *     than the run
   */
  public static double heatingCurrent(
      double run, double runTime, double start, double startTime, double period) {
    Require.notNegative("running current", run);
    Require.notNegative("starting current", start);
    Require.notNegative("starting time", startTime);
    double steady = Require.notNegative("run time less the starts", runTime - 2 * startTime);
    Require.positive("period", period);
    Require.notNegative("period less run time", period - runTime);
    return Math.sqrt((2 * start * start * startTime + run * run * steady) / period);
  }

  /**
   * Time (s) that a cold motor may run without a pause until it is as hot as its rating allows: τ
   * ln(i²/(i² - 1)), i the current over the rated one. Infinite up to the rated current. The
   * thermal curve of IEC 60255-149 for a cold start.
   *
   * @param timeConstant τ
   * @throws IllegalArgumentException if an argument is not positive
   */
  public static double timeToLimit(double current, double rated, double timeConstant) {
    double i = Require.positive("current", current) / Require.positive("rated current", rated);
    Require.positive("time constant", timeConstant);
    return i <= 1 ? Double.POSITIVE_INFINITY : timeConstant * Math.log(i * i / (i * i - 1));
  }
}
