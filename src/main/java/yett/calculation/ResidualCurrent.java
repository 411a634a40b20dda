package yett.calculation;

/** Limits of the leakage current to earth (A) before the device that protects people trips. */
public final class ResidualCurrent {
  private static final double USUAL_SHARE = 0.3;

  private ResidualCurrent() {}

  /**
   * The trip current (A) for a nominal voltage (V): 6 mA in the systems of 120 V, 208 V and 240 V,
   * elsewhere 30 mA. Sources: UL 943; IEC 61008.
   */
  public static double trip(double nominal) {
    return nominal == 120 || nominal == 208 || nominal == 240 ? 0.006 : 0.030;
  }

  /**
   * The usual leakage (A) of a sound gate: at most three tenths of {@link #trip}. BS 7671 531.3.2,
   * from memory.
   */
  public static Range usual(double nominal) {
    return new Range(0, USUAL_SHARE * trip(nominal));
  }
}
