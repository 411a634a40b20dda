package yett.worksheet;

/**
 * What was typed cannot be taken. The message is for the person who typed it: what is wrong, and
 * what to type instead.
 */
public final class InputException extends IllegalArgumentException {
  public InputException(String message) {
    // It may go to standard error, past the screen that knows a space that does not break.
    super(message.replace('\u00a0', ' '));
  }
}
