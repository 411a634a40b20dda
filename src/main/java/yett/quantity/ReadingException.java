package yett.quantity;

/**
 * A typed reading that cannot be taken as it stands. The message is one plain sentence for the
 * person who typed it: what was wrong, and what to type instead.
 */
public final class ReadingException extends RuntimeException {
  ReadingException(String message) {
    super(message);
  }
}
