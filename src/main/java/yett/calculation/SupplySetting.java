package yett.calculation;

/**
 * What a supply gives when its input setting does not match its mains, and what a meter shows
 * behind its rectifier. Voltages in V, alternating ones as rms. Source: textbook, ideal transformer
 * and sine wave, no load.
 */
public final class SupplySetting {
  /** V that a supply for charging a 24 V pair gives with its mains at the tap: common practice. */
  public static final Range CHARGING = new Range(29, 34);

  /** Share by which mains and tap may differ, as taps stand for that much: common practice. */
  public static final double FITS = 0.1;

  private SupplySetting() {}

  /** Whether a tap fits the mains: no further apart than {@link #FITS} of the mains. */
  public static boolean fits(double mains, double tap) {
    return Math.abs(mains - tap) <= FITS * mains;
  }

  /**
   * Secondary voltage (V) with the input on a tap: rated secondary × input/tap. Above about 1.1
   * times the tap's voltage a real core saturates and a fuse goes first.
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
