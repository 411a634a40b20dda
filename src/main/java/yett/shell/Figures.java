package yett.shell;

import java.util.Locale;

/** Numbers as the screens write them. */
final class Figures {
  private Figures() {}

  /** A probability in whole percent; what is not certain is never shown as 0 or 100. */
  static String percent(double chance) {
    long rounded = Math.round(100 * chance);
    if (rounded == 0) {
      return "under 1\u00a0%";
    }
    return rounded == 100 && chance < 1 ? "over 99\u00a0%" : rounded + "\u00a0%";
  }

  /** Evidence with its sign, one decimal. */
  static String decibans(double decibans) {
    if (Double.isNaN(decibans) || Double.isInfinite(decibans)) {
      return "beyond measure";
    }
    return String.format(Locale.ROOT, "%+.1f\u00a0dB", decibans == 0 ? 0.0 : decibans);
  }

  static String minutes(double minutes) {
    if (minutes < 1) {
      return "under a minute";
    }
    long whole = Math.round(minutes);
    return whole >= 120
        ? String.format(Locale.ROOT, "%.1f\u00a0h", minutes / 60)
        : whole + "\u00a0min";
  }
}
