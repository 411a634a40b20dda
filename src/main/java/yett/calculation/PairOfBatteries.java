package yett.calculation;

/**
 * The usual values of the pair of 12 V lead-acid batteries (twelve cells) that a 24 V gate runs on.
 */
public final class PairOfBatteries {
  public static final int CELLS = 12;

  /**
   * Multiple of {@link #resistance} up to which a pair is sound; above it a block or a joint is
   * failing. A fifth over its own baseline calls for action (IEEE 1188 as paraphrased).
   */
  public static final double SOUND = 1.2;

  /**
   * Resistance (ohm) of both blocks and their cables at 15 degC and above; for small blocks from
   * memory.
   */
  private static final double RESISTANCE = 0.06;

  /** Part of it (ohm) that is due to links, lugs and leads: common practice. */
  private static final double CABLES = 0.01;

  /**
   * Resistance times capacity (ohm Ah) of a block: a sound one of 40 Ah has under 8 mohm (data
   * sheet).
   */
  private static final double BLOCK = 0.008 * 40;

  /** Highest float voltage in data sheets (V a cell at 25 degC). */
  private static final double HIGHEST_FLOAT = 2.32;

  /**
   * Float voltage (V) of a charger without temperature compensation: that of 25 degC at all times.
   */
  private static final double FLOAT_AT_25 = 27.0;

  /**
   * Volts above the highest of {@link #charging} that show a fault: no sound pair of this kind is
   * charged so high; considered judgement.
   */
  public static final double BOILS = 2;

  /** Voltage (V) of a charged, sound pair that supplies 20 A in mild weather; common practice. */
  private static final Range RUNNING = new Range(23.5, 26);

  /** Volts by which {@link #RUNNING} falls for each degree below 15 degC. */
  private static final double RUNNING_COLDER = 0.02;

  /** Smallest voltage drop (V) that a meter can distinguish from none. */
  private static final double LEAST_FALL = 0.6;

  /** Voltage (V) lost between the batteries and a controller at rest. */
  private static final double TO_CONTROLLER = 0.3;

  /** Tolerance (V) of an ordinary charger's regulation; common practice. */
  private static final double REGULATION = 0.4;

  private PairOfBatteries() {}

  /**
   * Voltage (V) at the batteries while they are charged: float of a charger with or without
   * compensation, up to absorption at 2.45 V a cell and 25 degC. Source: battery data sheets.
   */
  public static Range charging(double temperature) {
    return new Range(
        Math.min(FLOAT_AT_25, LeadAcid.floatVoltage(CELLS, temperature)) - REGULATION,
        LeadAcid.compensated(CELLS, 2.45, 0.005, temperature));
  }

  /**
   * Voltage (V) at the batteries once they are full: from that of {@link #charging} up to a float
   * of 2.32 V a cell and 25 degC, less 3 mV for each degree. Source: battery data sheets.
   */
  public static Range floating(double temperature) {
    return new Range(
        charging(temperature).low(),
        LeadAcid.compensated(CELLS, HIGHEST_FLOAT, 0.003, temperature));
  }

  /**
   * Voltage (V) at rest of a pair that is charged to three quarters or more, ten minutes after the
   * charge or later. Source: as {@link LeadAcid.Build}; common practice for what the charge leaves.
   */
  public static Range atRest(LeadAcid.Build build) {
    return new Range(
        2 * LeadAcid.restVoltage(build, 0.75),
        2 * (build.highestAtRest() + LeadAcid.SURFACE_CHARGE));
  }

  /**
   * Highest resistance (ohm) of sound small batteries and their cables: 60 mohm, 1 % more for each
   * degree below 15 degC. Source: battery data sheets, small blocks from memory.
   */
  public static double resistance(double temperature) {
    return RESISTANCE * colder(temperature);
  }

  /**
   * Highest resistance (ohm) of a sound pair of blocks of a capacity (Ah) with its cables. A
   * block's resistance is inversely proportional to its capacity; one of 40 Ah has 8 mohm. Never
   * more than {@link #resistance(double)}. Source: battery data sheet; considered judgement for
   * other capacities.
   *
   * @throws IllegalArgumentException if the capacity is not positive
   */
  public static double resistance(double temperature, double capacity) {
    return Math.min(RESISTANCE, 2 * block(capacity) + CABLES) * colder(temperature);
  }

  /**
   * Highest resistance (ohm) of one sound block, read at its own posts; otherwise as {@link
   * #resistance(double, double)}.
   */
  public static double blockResistance(double temperature, double capacity) {
    return Math.min((RESISTANCE - CABLES) / 2, block(capacity)) * colder(temperature);
  }

  /**
   * Highest voltage (V) of a full pair at rest; above it the pair still has surface charge from the
   * last charge.
   */
  public static double highestAtRest(LeadAcid.Build build) {
    return 2 * build.highestAtRest();
  }

  /**
   * Voltage (V) of a charged, sound pair that gives 20 A at a temperature (degC): 25.4 V less 20 A
   * through 50 to 95 mohm, and 20 mV less for each degree below 15 degC. Common practice.
   */
  public static Range running(double temperature) {
    return new Range(RUNNING.low() - RUNNING_COLDER * below15(temperature), RUNNING.high());
  }

  /**
   * Corrects the lowest voltage (V) of a run from one temperature (degC) to another: 20 mV less for
   * each degree below 15 degC, as in {@link #running}. Common practice.
   */
  public static double runningAt(double volts, double from, double to) {
    return volts + RUNNING_COLDER * (below15(from) - below15(to));
  }

  /**
   * Voltage drop (V) of a sound pair when it supplies a current (A): through its {@link
   * #resistance(double)}; the high end is at least 0.6 V.
   */
  public static Range fall(double current, double temperature) {
    return new Range(0, Math.max(LEAST_FALL, current * resistance(temperature)));
  }

  /** Voltage (V) at the controller for a voltage at the battery posts. Considered judgement. */
  public static Range atController(Range atPosts) {
    return new Range(atPosts.low() - TO_CONTROLLER, atPosts.high());
  }

  /**
   * Temperature (degC) of batteries in a closed housing on a day with this air temperature (degC).
   * Common practice.
   */
  public static Range warmth(double day) {
    return new Range(day - 5, day + 10);
  }

  private static double block(double capacity) {
    return BLOCK / Require.positive("capacity", capacity);
  }

  private static double colder(double temperature) {
    return 1 + 0.01 * below15(temperature);
  }

  private static double below15(double temperature) {
    return Math.max(0, 15 - temperature);
  }
}
