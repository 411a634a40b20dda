package yett.belief;

/** Weight of evidence on the scale of I. J. Good: 10 log10 of odds or of a ratio of odds. */
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

  /** Evidence that moved a belief, in decibans. */
  public static double between(double before, double after) {
    if (before == after) {
      return 0;
    }
    return ofProbability(after) - ofProbability(before);
  }

  /**
   * What seeing one of some outcomes says for the one of two chances of it, in decibans: with the
   * slips of those who look, as the belief counts them.
   */
  public static double ofSeeing(double chance, double other, int outcomes) {
    return 10
        * Math.log10(CardModel.withSlips(chance, outcomes) / CardModel.withSlips(other, outcomes));
  }
}
