package yett.worksheet;

import yett.quantity.Unit;

/**
 * An input with what was given for it.
 *
 * @param typed as typed, or the usual value
 * @param usual whether nobody typed it
 * @param value in the canonical unit; for a choice its position
 * @param standardUncertainty in the canonical unit; 0 if none was given
 * @param unit the one it was typed in
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

  /** What it was taken to mean. */
  public String shown() {
    return switch (input.kind()) {
      case READING, WHOLE -> input.quantity().show(value, unit);
      case CHOICE -> choice().words();
      case FILE -> typed;
    };
  }
}
