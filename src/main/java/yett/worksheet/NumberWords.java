package yett.worksheet;

import java.math.BigDecimal;
import java.math.MathContext;
import yett.quantity.Unit;
import yett.quantity.Units;

/** Numbers as they stand in a sentence: three figures, number and unit on one line. */
public final class NumberWords {
  private static final MathContext FIGURES = new MathContext(3);

  private NumberWords() {}

  /** The US customary unit for what is told in a unit, the same where that system has no other. */
  static Unit customary(Unit unit) {
    return Units.US.of(unit);
  }

  /**
   * A value with its unit, and in brackets in the US customary one where that is another.
   *
   * @throws IllegalArgumentException if the value is not finite
   */
  public static String told(double value, Unit unit) {
    Unit other = customary(unit);
    String own = shown(value, unit);
    return other == unit
        ? own
        : own + " (" + shown(other.fromCanonical(unit.toCanonical(value)), other) + ")";
  }

  private static String shown(double value, Unit unit) {
    double rounded = BigDecimal.valueOf(value).round(FIGURES).doubleValue();
    return unit.quantity().show(unit.toCanonical(rounded), unit).replace(' ', '\u00a0');
  }

  /** A number of things, one of them without the s: {@code 1 turn}, {@code 3 turns}. */
  public static String count(double number, String things) {
    String one = things.substring(0, things.length() - 1);
    return told(number, Unit.ONE) + " " + (number == 1 ? one : things);
  }

  /** From one text to another, {@code 10 N to 12 N}; one of them where they read the same. */
  public static String range(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }
}
