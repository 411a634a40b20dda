package yett.worksheet;

import java.math.BigDecimal;
import java.math.MathContext;
import yett.quantity.Unit;
import yett.quantity.Units;

/** Formats numbers for sentences: three figures, with number and unit kept on one line. */
public final class NumberWords {
  private static final MathContext FIGURES = new MathContext(3);

  private NumberWords() {}

  /** The US customary unit for a unit; the same unit if that system has no other. */
  static Unit customary(Unit unit) {
    return Units.US.of(unit);
  }

  /**
   * A value with its unit and, in brackets, in the US customary unit if that differs.
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

  /** A number of things, with the singular for one: {@code 1 turn}, {@code 3 turns}. */
  public static String count(double number, String things) {
    String one = things.substring(0, things.length() - 1);
    return told(number, Unit.ONE) + " " + (number == 1 ? one : things);
  }

  /** A range between two texts, {@code 10 N to 12 N}; only one of them if they are equal. */
  public static String range(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }
}
