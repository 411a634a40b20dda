package yett.calculation;

/**
 * Calculates the output of a supply whose input setting (tap) does not match its mains, and the
 * reading behind its rectifier. Voltages in V, alternating ones as rms. Source: textbook, ideal
 * transformer and sine wave, no load.
 */
public final class SupplySetting {
  /**
   * Output (V) of a supply that charges a 24 V pair, with its tap set to its mains: common
   * practice.
   */
  public static final Range CHARGING = new Range(29, 34);

  /** Share by which mains and tap may differ: common practice, a tap is meant for that range. */
  public static final double FITS = 0.1;

  private SupplySetting() {}

  /** Whether a tap fits the mains: they differ by at most {@link #FITS} of the mains. */
  public static boolean fits(double mains, double tap) {
    return Math.abs(mains - tap) <= FITS * mains;
  }

  /**
   * Secondary voltage (V) at an input voltage, with the supply set to a tap: rated secondary ×
   * input/tap. Above about 1.1 times the tap's voltage a real core saturates and a fuse goes first.
   *
   * @throws IllegalArgumentException if rated or tap voltage is not positive or the input negative
   */
  public static double secondaryVoltage(double rated, double input, double tap) {
    Require.positive("rated secondary voltage", rated);
    Require.notNegative("input voltage", input);
    Require.positive("tap voltage", tap);
    return rated * input / tap;
  }

  /**
   * Peak (V) behind a rectifier, what a smoothing capacitor charges to without load: √2 V less the
   * diodes' drop, 1.4 V for a silicon bridge.
   *
   * @throws IllegalArgumentException if either voltage is negative
   */
  public static double rectifiedPeak(double rms, double diodeDrop) {
    Require.notNegative("rms voltage", rms);
    Require.notNegative("diode drop", diodeDrop);
    return Math.max(0, rms * Math.sqrt(2) - diodeDrop);
  }

  /**
   * Mean (V) of the full-wave rectified sine without smoothing, what a direct-voltage meter shows:
   * (2/π) √2 V = 0.9003 V, diodes left out.
   *
   * @throws IllegalArgumentException if the voltage is negative
   */
  public static double rectifiedMean(double rms) {
    return Require.notNegative("rms voltage", rms) * 2 * Math.sqrt(2) / Math.PI;
  }
}
