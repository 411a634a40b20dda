package yett.calculation;

/**
 * Calculates what is left of a lead-acid battery's rated capacity after cold and age, and how long
 * it lasts. Capacities as fractions are 0 or more; temperatures are those of the battery, in degC.
 */
public final class BatteryCapacity {
  /** Below this fraction of the rated capacity a battery is replaced: IEEE 450, IEEE 1188. */
  public static final double WORN = 0.8;

  /** Below this it is tested every year: maintenance note of a battery maker's association. */
  public static final double WATCH = 0.9;

  /** Share of the capacity that is used before a battery is charged again. */
  private static final double USED = 0.8;

  private static final double[] TEMPERATURES = {-10, 0, 5, 10, 15, 20, 25, 30, 40};
  private static final double[] LONG = {0.74, 0.84, 0.88, 0.90, 0.94, 0.99, 1.00, 1.03, 1.05};
  private static final double[] SHORT_TEMPERATURES = {0, 10, 25, 40};
  private static final double[] SHORT = {0.80, 0.88, 1.00, 1.10};

  private BatteryCapacity() {}

  /**
   * Capacity at a temperature, as a fraction of that at 25 degC. Published capacity table of an AGM
   * battery, for discharges over 60 and under 30 minutes, straight lines between its rows and
   * between those times; -10 degC from another data sheet, and short discharges below 0 degC in
   * proportion. Below -10 degC the last line is extended, at 1 % a degree: 64 % at -20 degC, where
   * data sheets give 60 % to 65 %, from memory.
   *
   * @param temperature from -40 to 40
   * @param hours how long the discharge lasts
   * @throws IllegalArgumentException if the temperature is outside its range, or the time is not
   *     positive
   */
  public static double atTemperature(double temperature, double hours) {
    Require.between("battery temperature", temperature, -40, 40);
    Require.positive("hours", hours);
    double slow =
        temperature < TEMPERATURES[0]
            ? LONG[0] + 0.01 * (temperature - TEMPERATURES[0])
            : Interpolation.at(temperature, TEMPERATURES, LONG);
    double fast =
        temperature < 0
            ? slow * SHORT[0] / 0.84
            : Interpolation.at(temperature, SHORT_TEMPERATURES, SHORT);
    double share = Math.min(Math.max((hours - 0.5) / 0.5, 0), 1);
    return fast + share * (slow - fast);
  }

  /**
   * The fraction of the capacity left at an age: 1 - 0.2 a/L, as design life ends at 80 % of the
   * rated capacity, and life halves for every 10 degC above 25 degC (below 25 degC it counts as
   * unchanged). Rule of thumb behind IEEE 450 and 1188, from memory; a single battery may fail
   * earlier or last longer. Never below 0.
   *
   * @param years a
   * @param designYears L, at 25 degC
   * @param usualTemperature yearly mean at the battery, degC
   * @throws IllegalArgumentException if the age is negative or the life not positive
   */
  public static double aged(double years, double designYears, double usualTemperature) {
    Require.notNegative("age", years);
    Require.positive("design life", designYears);
    double life = designYears * Math.min(1, Math.pow(2, (25 - usualTemperature) / 10));
    return Math.max(0, 1 - (1 - WORN) * years / life);
  }

  /**
   * Corrects a measured capacity to 25 degC: C/(1 + k (T - 25)). Source: discharge-test practice, k
   * 0.006 for a discharge over 10 to 20 h and 0.01 over 1 to 3 h.
   *
   * @throws IllegalArgumentException if the capacity is negative or the divisor not positive
   */
  public static double at25(double measured, double temperature, double coefficient) {
    Require.notNegative("measured capacity", measured);
    return measured
        / Require.positive("temperature correction", 1 + coefficient * (temperature - 25));
  }

  /**
   * Runtime (h) at a constant current, by {@link LeadAcid#peukertHours} with the capacity that is
   * left at this temperature, age and charge. It is at most the capacity divided by the current,
   * because Peukert's law gives too long a time for currents below the rated one.
   *
   * @param rated Ah at the rated time
   * @param left fraction of it that age and charge leave, over 0
   * @param temperature from -40 to 40
   * @throws IllegalArgumentException as its parts
   */
  public static double runtime(
      double rated,
      double ratedHours,
      double current,
      double exponent,
      double left,
      double temperature) {
    double hours = ratedHours;
    // The capacity depends on the runtime and the runtime on the capacity; 30 rounds converge.
    for (int round = 0; round < 30; round++) {
      double capacity = rated * left * atTemperature(temperature, hours);
      hours =
          Math.min(
              LeadAcid.peukertHours(capacity, ratedHours, current, exponent), capacity / current);
    }
    return hours;
  }

  /**
   * Time (h) that full batteries last at a small standing current (A), until a fifth of their
   * capacity (Ah) is left. Arithmetic; battery data sheets.
   *
   * @throws IllegalArgumentException if the current is not positive
   */
  public static double standing(double capacity, double current) {
    return USED * capacity / Require.positive("current", current);
  }
}
