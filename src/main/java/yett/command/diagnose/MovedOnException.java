package yett.command.diagnose;

/** What was said while a screen was read leads somewhere else: the step in hand is put aside. */
final class MovedOnException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  MovedOnException() {
    super("the case has moved on", null, false, false);
  }
}
