package yett.interview.watch;

/** Thrown when a case reaches something that must never happen; the message says what. */
public final class UnsafeStep extends RuntimeException {
  private static final long serialVersionUID = 1;

  UnsafeStep(String message) {
    super(message);
  }
}
