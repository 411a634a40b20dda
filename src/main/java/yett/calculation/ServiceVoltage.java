package yett.calculation;

/**
 * The voltage a supplier should deliver at the service for a nominal voltage, all in V rms. At the
 * operator's terminals a little less is normal, for the drop of the wiring in between.
 *
 * <p>All methods throw IllegalArgumentException if the nominal voltage is not positive.
 */
public final class ServiceVoltage {
  /**
   * Where the nominal voltage is 100 V: 101 V, 6 V either way (Japan's Electricity Business Act,
   * from memory).
   */
  public static final Range AT_100 = new Range(95, 107);

  private ServiceVoltage() {}

  /** ANSI C84.1 Range A, the ordinary case: ±5 %. Its table rounds 208 V to 197 to 218 V. */
  public static Range rangeA(double nominal) {
    Require.positive("nominal voltage", nominal);
    return new Range(nominal * 0.95, nominal * 1.05);
  }

  /**
   * EN 50160: ±10 %, within which 95 % of a week's ten-minute means must lie. One spot reading
   * outside proves nothing yet.
   */
  public static Range en50160(double nominal) {
    Require.positive("nominal voltage", nominal);
    return new Range(nominal * 0.9, nominal * 1.1);
  }
}
