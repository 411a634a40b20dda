package yett.wording;

import java.util.Locale;
import yett.interview.evidence.Chance;

/** Formats numbers for screens. */
public final class Figures {
  private Figures() {}

  /** A probability in whole percent; a no-break space keeps figure and sign on one line. */
  public static String percent(double chance) {
    return Chance.of(chance).percent().replace(' ', '\u00a0');
  }

  /** Evidence with its sign, one decimal. */
  public static String decibans(double decibans) {
    if (Double.isNaN(decibans) || Double.isInfinite(decibans)) {
      return "off the scale";
    }
    return String.format(Locale.ROOT, "%+.1f\u00a0dB", decibans == 0 ? 0.0 : decibans);
  }

  public static String minutes(double minutes) {
    if (minutes < 1) {
      return "under a minute";
    }
    long whole = Math.round(minutes);
    return whole >= 120
        ? String.format(Locale.ROOT, "%.1f\u00a0h", minutes / 60)
        : whole + "\u00a0min";
  }
}
