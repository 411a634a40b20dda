package yett.interview;

/**
 * A probability as people say it. One table for the whole program, so that "likely" means the same
 * on a screen, in a record and on a hand-over sheet.
 *
 * @param of the probability, 0 to 1
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
   * The words; considered judgement, the table is in docs/replay.md. They go by the whole percent,
   * so that the same figure never stands beside two different words.
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

  /** In whole percent; never 0 % or 100 %, which would claim more than anybody can know. */
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
