package yett.interview.evidence;

import java.util.Locale;
import yett.belief.Decibans;

/**
 * The strength of evidence for or against a cause, in numbers and words.
 *
 * @param decibans change of the log-odds on the scale of I. J. Good: 10 log10 of the ratio of odds
 */
public record Weight(double decibans) {

  /** The weight of evidence that changed a probability from one value to another. */
  public static Weight between(double before, double after) {
    return new Weight(Decibans.between(before, after));
  }

  /**
   * In words: for or against, and how strongly. 1 deciban is about the least that a person notices.
   */
  public String words() {
    double size = Math.abs(decibans);
    if (Double.isInfinite(size)) {
      return decibans > 0 ? "makes certain" : "rules out";
    }
    if (size < 1) {
      return "says hardly anything on";
    }
    String how = size < 3 ? "slightly" : size < 10 ? "clearly" : "strongly";
    return "speaks " + how + (decibans > 0 ? " for" : " against");
  }

  /** The number: {@code +9.4 decibans}. */
  public String figure() {
    if (Double.isInfinite(decibans)) {
      return decibans > 0 ? "beyond all measure" : "beyond all measure against";
    }
    return String.format(Locale.ROOT, "%+.1f decibans", decibans);
  }
}
