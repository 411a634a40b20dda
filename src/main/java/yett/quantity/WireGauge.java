package yett.quantity;

import java.util.Locale;

/**
 * American wire gauge (ASTM B258): 36 AWG has a diameter of 0.127 mm, and each step multiplies the
 * diameter by the 39th root of 92.
 */
public final class WireGauge {
  private static final double THINNEST = 0.127;
  private static final int ITS_NUMBER = 36;
  private static final double STEP = Math.log(92) / 39;

  private WireGauge() {}

  /**
   * The cross-section of a gauge.
   *
   * @param number 0 for 1/0, -1 for 2/0 and so on
   * @return mm2
   */
  public static double area(int number) {
    double diameter = THINNEST * Math.exp(STEP * (ITS_NUMBER - number));
    return Math.PI / 4 * diameter * diameter;
  }

  /** The nearest gauge to a cross-section, as a phrase such as {@code near 13 AWG}. */
  public static String nearest(double mm2) {
    double diameter = Math.sqrt(4 * mm2 / Math.PI);
    long number = Math.round(ITS_NUMBER - Math.log(diameter / THINNEST) / STEP);
    return String.format(
        Locale.ROOT, "near %s AWG", number > 0 ? String.valueOf(number) : 1 - number + "/0");
  }
}
