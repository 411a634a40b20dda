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

  /** The words; considered judgement, the limits are those of the table in docs/replay.md. */
  public String words() {
    if (of >= 0.95) {
      return "almost certain";
    }
    if (of >= 0.8) {
      return "very likely";
    }
    if (of >= 0.5) {
      return "likely";
    }
    if (of >= 0.2) {
      return "possible";
    }
    return of >= 0.05 ? "unlikely" : "very unlikely";
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
