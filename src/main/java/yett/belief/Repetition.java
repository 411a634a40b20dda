package yett.belief;

/**
 * Declares that a check partly repeats another one: with chance {@code share} it copies the other's
 * true outcome, otherwise it is independent. Joint chance of the original a and repetitions b_j:
 * P(a) prod_j (s_j [b_j = a] + (1 - s_j) P(b_j)); it does not depend on the order of answers.
 *
 * @param original the check that is repeated; it must not be a repetition itself
 * @param share 0 (independent) to 1 (the same thing)
 * @param outcomes for each outcome of the original the same outcome here, or -1 if there is none
 */
record Repetition(String original, double share, int[] outcomes) {
  /**
   * Chance that an unchanged gate repeats itself: that a check made again after a repair that
   * changed nothing shows the same, or that the gate does the same at the next try. It is the same
   * gate and the same person looking (considered judgement).
   */
  static final double AGAIN = 0.9;
}
