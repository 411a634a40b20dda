package yett.interview.evidence;

/**
 * A probability in words and whole percent. The whole program uses one table of words, so that
 * "likely" means the same on a screen, in a record and on a hand-over sheet.
 *
 * @param of the probability from 0 to 1
 */
public record Chance(double of) {

  public Chance {
    if (!(of >= -1e-9 && of <= 1 + 1e-9)) {
      throw new IllegalArgumentException("no probability: " + of);
    }
  }

  public static Chance of(double probability) {
    return new Chance(probability);
  }

  /**
   * The words for it; considered judgement, the table is in docs/replay.md. They depend on the
   * percentage as shown, so that one percentage always has the same words.
   */
  public String words() {
    long percent = Math.round(100 * of);
    if (percent >= 95) {
      return "almost certain";
    }
    if (percent >= 80) {
      return "very likely";
    }
    if (percent >= 50) {
      return "likely";
    }
    if (percent >= 20) {
      return "possible";
    }
    return percent >= 5 ? "unlikely" : "very unlikely";
  }

  /** In whole percent, from 1 % to 99 %: nobody can be certain. */
  public String percent() {
    if (of > 0.995) {
      return "over 99 %";
    }
    return of < 0.005 ? "under 1 %" : Math.round(100 * of) + " %";
  }

  /** Words and percent: {@code very likely (83 %)}. */
  @Override
  public String toString() {
    return words() + " (" + percent() + ")";
  }
}
