package yett.interview;

/** Something came up in a case that must never be; the message says what. */
public final class UnsafeStep extends RuntimeException {
  private static final long serialVersionUID = 1;

  UnsafeStep(String message) {
    super(message);
  }
}
