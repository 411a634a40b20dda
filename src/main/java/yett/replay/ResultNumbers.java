package yett.replay;

/** Rounds numbers in results to significant digits. */
final class ResultNumbers {
  private ResultNumbers() {}

  static double minutes(double minutes) {
    return Math.round(minutes * 10) / 10.0;
  }

  static double chance(double chance) {
    return Math.round(chance * 10_000) / 10_000.0;
  }
}
