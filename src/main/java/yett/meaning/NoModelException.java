package yett.meaning;

/**
 * Meanings cannot be compared here; the message says why. Without them, only the understanding of
 * words is worse.
 */
public final class NoModelException extends Exception {
  private static final long serialVersionUID = 1;

  NoModelException(String why, Throwable cause) {
    super(why, cause);
  }
}
