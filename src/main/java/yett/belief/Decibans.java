package yett.belief;

/**
 * Weight of evidence on the scale of I. J. Good, in decibans: 10 log10 of odds or of a ratio of
 * odds.
 */
public final class Decibans {
  private Decibans() {}

  /**
   * Log-odds of a probability, in decibans.
   *
   * @param probability 0 to 1; the ends give infinities
   */
  public static double ofProbability(double probability) {
    return 10 * Math.log10(probability / (1 - probability));
  }

  /** The evidence (decibans) that changed a probability from one value to another. */
  public static double between(double before, double after) {
    if (before == after) {
      return 0;
    }
    return ofProbability(after) - ofProbability(before);
  }

  /**
   * The evidence (decibans) in an outcome for one chance of it against another, with the same
   * allowance for wrong observations as in the belief.
   *
   * @param outcomes number of outcomes
   */
  public static double ofSeeing(double chance, double other, int outcomes) {
    return 10
        * Math.log10(CardModel.withSlips(chance, outcomes) / CardModel.withSlips(other, outcomes));
  }
}
