package yett.quantity;

import java.util.Locale;

/**
 * American wire gauge: each step is the 39th root of 92 in diameter, 36 AWG being 0.127 mm (ASTM
 * B258).
 */
public final class WireGauge {
  private static final double THINNEST = 0.127;
  private static final int ITS_NUMBER = 36;
  private static final double STEP = Math.log(92) / 39;

  private WireGauge() {}

  /**
   * Cross-section of a gauge.
   *
   * @param number 0 for 1/0, -1 for 2/0 and so on
   * @return mm2
   */
  public static double area(int number) {
    double diameter = THINNEST * Math.exp(STEP * (ITS_NUMBER - number));
    return Math.PI / 4 * diameter * diameter;
  }

  /** The gauge whose number is nearest to that of a cross-section, such as {@code near 13 AWG}. */
  public static String nearest(double mm2) {
    double diameter = Math.sqrt(4 * mm2 / Math.PI);
    long number = Math.round(ITS_NUMBER - Math.log(diameter / THINNEST) / STEP);
    return String.format(
        Locale.ROOT, "near %s AWG", number > 0 ? String.valueOf(number) : 1 - number + "/0");
  }
}
