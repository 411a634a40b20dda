package yett.worksheet;

import java.math.BigDecimal;
import java.math.MathContext;
import yett.quantity.Unit;

/** Numbers as they stand in a sentence: three figures, number and unit on one line. */
public final class Tell {
  private static final MathContext FIGURES = new MathContext(3);

  private Tell() {}

  /**
   * A value with its unit.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String tell(double value, Unit unit) {
    double rounded = BigDecimal.valueOf(value).round(FIGURES).doubleValue();
    return unit.quantity().show(unit.toCanonical(rounded), unit).replace(' ', '\u00a0');
  }

  /** A value in one unit, and in brackets in another. */
  public static String both(double value, Unit unit, Unit other) {
    return tell(value, unit)
        + " ("
        + tell(other.fromCanonical(unit.toCanonical(value)), other)
        + ")";
  }

  /** A number of things, one of them without the s: {@code 1 turn}, {@code 3 turns}. */
  public static String count(double number, String things) {
    String one = things.substring(0, things.length() - 1);
    return tell(number, Unit.ONE) + " " + (number == 1 ? one : things);
  }

  /** From one text to another, {@code 10 N to 12 N}; one of them where they read the same. */
  public static String range(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }

  /** A length in m, in metres and feet. */
  public static String metres(double metres) {
    return tell(metres, Unit.METRE) + " (" + tell(metres / 0.3048, Unit.FOOT) + ")";
  }

  /** A fraction in percent. */
  public static String percent(double fraction) {
    return tell(100 * fraction, Unit.PERCENT);
  }
}
