package yett.calculation;

import java.util.OptionalDouble;

/**
 * Lead-acid batteries: blocks of 12 V (six cells) unless a method takes the number of cells. Double
 * every voltage for a pair in series. Temperatures are those of the battery, in degC; state of
 * charge is a fraction from 0 to 1.
 */
public final class LeadAcid {
  /** How a block is built; the rest voltage depends on it. */
  public enum Build {
    /**
     * Absorbed glass mat. Published chart of a vehicle manual: 12.8 V and more full, 12.6 V 75 %,
     * 12.3 V 50 %, 12.0 V 25 %; no figure for empty. Full ones rest at 13.2 V at most.
     */
    AGM(13.2, new double[] {12.0, 12.3, 12.6, 12.8}, new double[] {0.25, 0.5, 0.75, 1}),
    /**
     * Flooded: 11.89, 12.06, 12.24, 12.45, 12.65 V, full ones 12.75 V at most; from memory of the
     * usual trade chart.
     */
    FLOODED(
        12.75,
        new double[] {11.89, 12.06, 12.24, 12.45, 12.65},
        new double[] {0, 0.25, 0.5, 0.75, 1});

    private final double highest;
    private final double[] volts;
    private final double[] charge;

    Build(double highest, double[] volts, double[] charge) {
      this.highest = highest;
      this.volts = volts;
      this.charge = charge;
    }

    /** Highest voltage (V) of a full 12 V block at rest; above it the block has not rested. */
    public double highestAtRest() {
      return highest;
    }
  }

  /**
   * Volts above the rest voltage that a 12 V block still shows ten minutes after a charge (surface
   * charge): common practice.
   */
  public static final double SURFACE_CHARGE = 0.4;

  /**
   * Rest voltage (V) that a block needs before a load test: from memory of battery-council
   * practice.
   */
  public static final double LOAD_TEST_REST = 12.4;

  private static final double REFERENCE_TEMPERATURE = 25;
  private static final double COMPENSATED_FROM = 5;
  private static final double COMPENSATED_TO = 40;

  private static final double[] LOAD_TEST_TEMPERATURES = {-18, -12, -7, -1, 4, 10, 16, 20};
  private static final double[] LOAD_TEST_VOLTS = {8.5, 8.7, 8.9, 9.1, 9.3, 9.4, 9.5, 9.6};

  private LeadAcid() {}

  /**
   * State of charge of a 12 V block from its rest voltage (V), on straight lines between the
   * chart's rows; 1 above the chart, empty below it. Valid near 25 degC after 8 h, better 24 h,
   * without charge or load. Public charts differ by up to 0.3 V, so the result may be a quarter of
   * the charge out either way: judge by {@link #chargeBand}.
   *
   * @throws IllegalArgumentException if the voltage is not positive
   */
  public static OptionalDouble charge(Build build, double restVoltage) {
    Require.positive("rest voltage", restVoltage);
    if (restVoltage < build.volts[0]) {
      return OptionalDouble.empty();
    }
    double top = build.volts[build.volts.length - 1];
    return OptionalDouble.of(
        Interpolation.at(Math.min(restVoltage, top), build.volts, build.charge));
  }

  /**
   * The quarter of the charge in which the chart puts a rest voltage (V): 0.5 to 0.75 for an AGM
   * block at 12.45 V. At the chart's full voltage and above it is exactly 1.
   *
   * @throws IllegalArgumentException if the voltage is not positive
   */
  public static Range chargeBand(Build build, double restVoltage) {
    Require.positive("rest voltage", restVoltage);
    int reached = -1;
    while (reached + 1 < build.volts.length && restVoltage >= build.volts[reached + 1]) {
      reached++;
    }
    double low = reached < 0 ? 0 : build.charge[reached];
    double high =
        reached + 1 < build.charge.length ? build.charge[reached + 1] : build.charge[reached];
    return new Range(low, high);
  }

  /**
   * Rest voltage (V) of a 12 V block at a state of charge: the inverse of {@link #charge}, valid as
   * it is.
   *
   * @throws IllegalArgumentException if the charge is outside the chart (AGM 0.25 to 1, flooded 0
   *     to 1)
   */
  public static double restVoltage(Build build, double charge) {
    Require.between("charge", charge, build.charge[0], 1);
    return Interpolation.at(charge, build.charge, build.volts);
  }

  /**
   * Float voltage (V) of a string of cells at a temperature: 2.25 V a cell at 25 degC, less 3 mV a
   * cell for each degree above, constant below 5 and above 40 degC. Source: operation manual of a
   * valve-regulated battery; other data sheets give up to 2.32 V a cell, so the battery's own data
   * sheet takes precedence.
   *
   * @throws IllegalArgumentException if cells is not positive or the temperature not finite
   */
  public static double floatVoltage(int cells, double temperature) {
    return compensated(cells, 2.25, 0.003, temperature);
  }

  /**
   * Charge voltage (V) at a temperature from the battery's own data sheet: n (V25 - k (T - 25)),
   * with T limited to 5 to 40 degC. The colder, the higher the voltage.
   *
   * @param perCell V a cell at 25 degC
   * @param fallPerDegree V a cell for each degC; 0.003 to 0.005 is usual
   * @throws IllegalArgumentException if cells or perCell is not positive, the fall negative or the
   *     temperature not finite
   */
  public static double compensated(
      int cells, double perCell, double fallPerDegree, double temperature) {
    Require.positive("cells", cells);
    Require.positive("voltage per cell", perCell);
    Require.notNegative("fall per degree", fallPerDegree);
    Require.finite("temperature", temperature);
    double held = Math.min(Math.max(temperature, COMPENSATED_FROM), COMPENSATED_TO);
    return cells * (perCell - fallPerDegree * (held - REFERENCE_TEMPERATURE));
  }

  /**
   * Lowest voltage (V) a good 12 V block may show at the end of 15 s at half its cold-cranking
   * current, by temperature, on straight lines between the rows of the usual table (vehicle service
   * information). Only for blocks with a cold-cranking rating: small standby blocks have none.
   *
   * @throws IllegalArgumentException below -18 degC, where the table ends
   */
  public static double loadTestMinimum(double temperature) {
    Require.between("temperature", temperature, -18, Double.MAX_VALUE);
    return Interpolation.at(Math.min(temperature, 20), LOAD_TEST_TEMPERATURES, LOAD_TEST_VOLTS);
  }

  /**
   * Internal resistance (ohm) from two steady loads, read at the posts a few seconds after each
   * step: (V1 - V2)/(I2 - I1). Source: textbook circuit; IEC 60896-21 uses a method of this kind.
   *
   * @throws IllegalArgumentException unless the second current (A) is the larger
   */
  public static double internalResistance(double v1, double i1, double v2, double i2) {
    Require.finite("first voltage", v1);
    Require.finite("second voltage", v2);
    Require.finite("first current", i1);
    return (v1 - v2) / Require.positive("rise of the current", i2 - i1);
  }

  /**
   * Runtime (h) at a constant current by Peukert, in the form with the rated time: t = H (C/(I
   * H))^k. Not the 1-ampere form t = C/I^k, which gives other answers for the same k. Valid from
   * 0.05 C to 1 C near 25 degC, at constant current: gate cycles are not. Usual k: AGM 1.05 to
   * 1.15, gel 1.1 to 1.25, flooded 1.2 to 1.6.
   *
   * @param capacity C, rated Ah at the rated time
   * @param ratedHours H, usually 20
   * @param current I, A
   * @param exponent k, 1 or more
   * @throws IllegalArgumentException if an argument is not positive, or k below 1
   */
  public static double peukertHours(
      double capacity, double ratedHours, double current, double exponent) {
    Require.positive("capacity", capacity);
    Require.positive("rated hours", ratedHours);
    Require.positive("current", current);
    Require.between("exponent", exponent, 1, 2);
    return ratedHours * Math.pow(capacity / (current * ratedHours), exponent);
  }
}
