package yett.calculation;

/**
 * The devices at a gate, each with the typical current that it draws at rest (A at 24 V). Source:
 * common practice.
 */
public enum AccessoryLoad {
  RADIO(0.04),
  KEYPAD(0.08),
  TELEPHONE_ENTRY(0.15),
  TIMER(0.02),
  BEAM(0.08),
  LOOPS(0.12),
  EXIT_SENSOR(0.05),
  EDGE_RECEIVER(0.03);

  /** Least upper end (A) of the usual range; nobody looks for an extra device below it. */
  private static final double LEAST = 0.2;

  private final double atRest;

  AccessoryLoad(double atRest) {
    this.atRest = atRest;
  }

  public double atRest() {
    return atRest;
  }

  /**
   * The usual current (A) of devices that are rated at a current together: from a third of it to
   * one and a half times it.
   */
  public static Range usual(double together) {
    return new Range(together / 3, Math.max(LEAST, 1.5 * together));
  }
}
