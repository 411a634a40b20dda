package yett.worksheet;

/**
 * Thrown for typed text that is not a valid input. The message is for the person who typed it: what
 * is wrong, and what to type instead.
 */
public final class InputException extends IllegalArgumentException {
  public InputException(String message) {
    // Standard error may not know the no-break space.
    super(message.replace('\u00a0', ' '));
  }
}
