package yett.calculation;

/** Refuses arguments for which a formula is not valid; the message gives their name and value. */
final class Require {
  private Require() {}

  static double positive(String name, double value) {
    return that(value > 0 && Double.isFinite(value), name, value, "must be more than 0");
  }

  static double notNegative(String name, double value) {
    return that(value >= 0 && Double.isFinite(value), name, value, "must not be negative");
  }

  static double finite(String name, double value) {
    return that(Double.isFinite(value), name, value, "must be finite");
  }

  static double between(String name, double value, double low, double high) {
    return that(value >= low && value <= high, name, value, "must be from " + low + " to " + high);
  }

  static int positive(String name, int value) {
    positive(name, (double) value);
    return value;
  }

  private static double that(boolean good, String name, double value, String rule) {
    if (!good) {
      throw new IllegalArgumentException(name + " " + rule + ", not " + value);
    }
    return value;
  }
}
