package yett.calculation;

/**
 * The usual values of a pack of eight lithium iron phosphate cells (25.6 V nominal) that a 24 V
 * gate runs on. Source, unless said otherwise: data sheets of such cells, from memory.
 */
public final class LithiumPack {
  public static final int CELLS = 8;

  /**
   * Voltage (V) while it is charged: float at 3.4 V a cell, up to 3.65 V, the most a cell takes.
   */
  public static final Range CHARGING = cells(3.4, 3.65);

  /**
   * Voltage (V) at rest when charged to three quarters or more: 3.3 V a cell, up to 3.45 V with
   * some of the last charge in it.
   */
  public static final Range AT_REST = cells(3.3, 3.45);

  /**
   * Highest resistance (ohm) of a sound pack, its protection and its cables: considered judgement.
   */
  public static final double RESISTANCE = 0.07;

  /** Smallest voltage drop (V) that a meter can distinguish from none. */
  private static final double LEAST_FALL = 0.6;

  private LithiumPack() {}

  private static Range cells(double low, double high) {
    return new Range(CELLS * low, CELLS * high);
  }

  /** Voltage (V) of a charged, sound pack that supplies a current (A). */
  public static Range running(double current) {
    return new Range(AT_REST.low() - current * RESISTANCE, AT_REST.high());
  }

  /**
   * Voltage drop (V) of a sound pack when it supplies a current (A); the high end is at least 0.6
   * V.
   */
  public static Range fall(double current) {
    return new Range(0, Math.max(LEAST_FALL, current * RESISTANCE));
  }
}
