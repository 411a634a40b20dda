package yett.calculation;

/**
 * What is usual on the pair of 12 V lead-acid batteries, twelve cells, that a 24 V gate runs on.
 */
public final class PairOfBatteries {
  public static final int CELLS = 12;

  /** Ohm, of both blocks and their cables at 15 degC and above; small blocks from memory. */
  private static final double RESISTANCE = 0.06;

  /** A charger without compensation stays at the float voltage of 25 degC. */
  private static final double FLOAT_AT_25 = 27.0;

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
   * The most (ohm) that sound batteries and cables have: 60 mohm, 1 % more for each degree below 15
   * degC. Source: battery data sheets, small blocks from memory.
   */
  public static double resistance(double temperature) {
    return RESISTANCE * (1 + 0.01 * Math.max(0, 15 - temperature));
  }
}
