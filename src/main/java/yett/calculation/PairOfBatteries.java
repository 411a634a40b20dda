package yett.calculation;

/**
 * What is usual on the pair of 12 V lead-acid batteries, twelve cells, that a 24 V gate runs on.
 */
public final class PairOfBatteries {
  public static final int CELLS = 12;

  /**
   * Times {@link #resistance} up to which a pair is sound; beyond, a block or a joint is going. A
   * fifth over its own baseline calls for action (IEEE 1188 as paraphrased).
   */
  public static final double SOUND = 1.2;

  /** Ohm, of both blocks and their cables at 15 degC and above; small blocks from memory. */
  private static final double RESISTANCE = 0.06;

  /** Ohm of links, lugs and leads among it: common practice. */
  private static final double CABLES = 0.01;

  /** Ohm times Ah of a block: a sound one of 40 Ah has under 8 mohm (data sheet). */
  private static final double BLOCK = 0.008 * 40;

  /** V a cell at 25 degC at which data sheets float at most. */
  private static final double HIGHEST_FLOAT = 2.32;

  /** A charger without compensation stays at the float voltage of 25 degC. */
  private static final double FLOAT_AT_25 = 27.0;

  /**
   * V above the highest of {@link #charging} that no sound pair of this kind takes; considered
   * judgement.
   */
  public static final double BOILS = 2;

  /** V of a charged, sound pair that gives 20 A in mild weather; common practice. */
  private static final Range RUNNING = new Range(23.5, 26);

  /** V that it falls lower for each degree below 15 degC. */
  private static final double RUNNING_COLDER = 0.02;

  /** V of a fall that a meter can tell from none. */
  private static final double LEAST_FALL = 0.6;

  /** V that is lost on the way to a controller that draws what it draws at rest. */
  private static final double TO_CONTROLLER = 0.3;

  /** V that the regulation of an ordinary charger leaves; common practice. */
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
   * The most (ohm) that sound small batteries and cables have: 60 mohm, 1 % more for each degree
   * below 15 degC. Source: battery data sheets, small blocks from memory.
   */
  public static double resistance(double temperature) {
    return RESISTANCE * colder(temperature);
  }

  /**
   * The most (ohm) that a sound pair of blocks of a capacity (Ah) has with its cables: a block's
   * resistance falls as its capacity rises, from one of 40 Ah with 8 mohm. Never more than {@link
   * #resistance(double)}. Source: battery data sheet; considered judgement for other capacities.
   *
   * @throws IllegalArgumentException if the capacity is not positive
   */
  public static double resistance(double temperature, double capacity) {
    return Math.min(RESISTANCE, 2 * block(capacity) + CABLES) * colder(temperature);
  }

  /** The same of one block, read at its own posts. */
  public static double blockResistance(double temperature, double capacity) {
    return Math.min((RESISTANCE - CABLES) / 2, block(capacity)) * colder(temperature);
  }

  /** V that a full pair has at most once it has rested; more is what the last charge left. */
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
   * What a pair that dipped to a voltage (V) at one temperature (degC) would dip to at another, by
   * the same rule: 20 mV less for each degree below 15 degC. Common practice.
   */
  public static double runningAt(double volts, double from, double to) {
    return volts + RUNNING_COLDER * (below15(from) - below15(to));
  }

  /**
   * How far (V) a sound pair falls while it gives a current (A): through its {@link
   * #resistance(double)}, and up to 0.6 V in any case.
   */
  public static Range fall(double current, double temperature) {
    return new Range(0, Math.max(LEAST_FALL, current * resistance(temperature)));
  }

  /** Voltage (V) at the controller of a pair with that at its posts. Considered judgement. */
  public static Range atController(Range atPosts) {
    return new Range(atPosts.low() - TO_CONTROLLER, atPosts.high());
  }

  /** Temperature (degC) of batteries in a closed housing on a day as warm. Common practice. */
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
