package yett.calculation;

/**
 * What devices at a gate take at rest, in A at 24 V; each about what such a device takes. Common
 * practice.
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

  /** A below which nobody looks for a device too many. */
  private static final double LEAST = 0.2;

  private final double atRest;

  AccessoryLoad(double atRest) {
    this.atRest = atRest;
  }

  public double atRest() {
    return atRest;
  }

  /** What is usual for devices that take a current together: a third of it to one and a half. */
  public static Range usual(double together) {
    return new Range(together / 3, Math.max(LEAST, 1.5 * together));
  }
}
