package yett.worksheet;

/**
 * What was typed cannot be taken. The message is for the person who typed it: what is wrong, and
 * what to type instead.
 */
public final class InputException extends IllegalArgumentException {
  public InputException(String message) {
    super(message);
  }
}
