package yett.command.diagnose.sitting;

/**
 * Thrown when something typed while a screen was being read leads elsewhere, so that the present
 * step is abandoned.
 */
public final class MovedOnException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  MovedOnException() {
    super("the case has moved on", null, false, false);
  }
}
