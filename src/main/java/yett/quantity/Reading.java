package yett.quantity;

import java.util.Objects;

/**
 * A typed reading and the value it was taken to mean.
 *
 * @param value the number in the quantity's canonical unit; always finite
 * @param typed the line as typed, without blanks around it
 * @param quantity what was measured
 * @param unit the unit typed, or the shown unit if only a number was typed; of a length in feet and
 *     inches, the larger one
 */
public record Reading(double value, String typed, Quantity quantity, Unit unit) {
  public Reading {
    Objects.requireNonNull(typed, "typed");
    quantity.requireOwn(unit);
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite, not " + value);
    }
  }

  /**
   * Reads a line such as {@code 24.3 V}, {@code 7 1/2 in}, {@code 7' 6"} or {@code 24,3}. A bare
   * number takes the shown unit. A line with two possible meanings is refused with a question;
   * nothing is guessed.
   *
   * @throws ReadingException if the line is not one reading of this quantity
   * @throws IllegalArgumentException if the shown unit is another quantity's
   */
  public static Reading parse(String typed, Quantity quantity, Unit shownUnit) {
    return parse(typed, quantity, shownUnit, quantity.example());
  }

  /**
   * Reads a line like {@link #parse(String, Quantity, Unit)}, with an example for the message when
   * it is refused.
   *
   * @param example a reading as it may be typed here
   */
  public static Reading parse(String typed, Quantity quantity, Unit shownUnit, String example) {
    return new ReadingParser(typed, quantity, shownUnit, example).reading();
  }

  /** Whether the line is what a meter shows, or people say, when the value is above its range. */
  public static boolean isOverRange(String typed, Quantity quantity) {
    return ReadingParser.isOverRange(typed.strip(), quantity);
  }

  /**
   * Reads a difference or a tolerance, such as a procedure's uncertainty of {@code 3 mm}. The
   * result differs from {@link #parse} for temperatures: 9 degF as a difference is 5 degC.
   *
   * @throws ReadingException if the line is not one difference in this quantity
   * @throws IllegalArgumentException if the shown unit is another quantity's
   */
  public static Reading parseDifference(String typed, Quantity quantity, Unit shownUnit) {
    return new ReadingParser(typed, quantity, shownUnit, quantity.example()).difference();
  }

  /** The value as a screen shows it in the unit it was typed in. */
  public String shown() {
    return quantity.show(value, unit);
  }
}
