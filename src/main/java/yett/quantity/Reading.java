package yett.quantity;

import java.util.Objects;

/**
 * A reading as typed, and what it was taken to mean.
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
   * number takes the shown unit. What could be read in two ways is refused with a question, never
   * guessed.
   *
   * @throws ReadingException if the line is not one reading of this quantity
   * @throws IllegalArgumentException if the shown unit is another quantity's
   */
  public static Reading parse(String typed, Quantity quantity, Unit shownUnit) {
    return parse(typed, quantity, shownUnit, quantity.example());
  }

  /**
   * The same where one knows what could have been read.
   *
   * @param example a reading as it may be typed here, which a refusal shows
   */
  public static Reading parse(String typed, Quantity quantity, Unit shownUnit, String example) {
    return new ReadingParser(typed, quantity, shownUnit, example).reading();
  }

  /** Whether a meter shows only that what it measures is too great for it. */
  public static boolean isOverRange(String typed) {
    return ReadingParser.OVER_RANGE.matcher(typed.strip()).matches();
  }

  /**
   * Reads a difference or a tolerance, such as a procedure's uncertainty of {@code 3 mm}. It parts
   * from {@link #parse} for temperatures: 9 degF as a difference is 5 degC.
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
