package yett.calculation;

/** Limits of the leakage current to earth (A) before the device that protects people trips. */
public final class ResidualCurrent {
  private static final double USUAL_SHARE = 0.3;

  private ResidualCurrent() {}

  /**
   * The trip current (A) for a nominal voltage (V): 30 mA at 230 V, 6 mA in the systems of 120 V,
   * 208 V and 240 V. Sources: IEC 61008; UL 943.
   */
  public static double trip(double nominal) {
    return nominal == 230 ? 0.030 : 0.006;
  }

  /**
   * The usual leakage (A) of a sound gate: at most three tenths of {@link #trip}. BS 7671 531.3.2,
   * from memory.
   */
  public static Range usual(double nominal) {
    return new Range(0, USUAL_SHARE * trip(nominal));
  }
}
