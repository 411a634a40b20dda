package yett.worksheet;

import yett.quantity.Unit;

/**
 * An input with its value.
 *
 * @param typed the text as typed, or the usual value
 * @param usual whether it is the usual value and was not typed
 * @param value in the canonical unit; for a choice its position
 * @param standardUncertainty in the canonical unit; 0 if none was given
 * @param unit in which it was typed
 */
public record Given(
    Input input, String typed, boolean usual, double value, double standardUncertainty, Unit unit) {

  Given moved(double newValue) {
    return new Given(input, typed, usual, newValue, standardUncertainty, unit);
  }

  /** The choice made. */
  public Choice choice() {
    return input.choices().get((int) value);
  }

  /** The value as it was understood, for people. */
  public String shown() {
    return switch (input.kind()) {
      case READING, WHOLE -> input.quantity().show(value, unit);
      case CHOICE -> choice().words();
      case FILE -> typed;
    };
  }
}
