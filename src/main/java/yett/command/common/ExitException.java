package yett.command.common;

import org.springframework.shell.core.command.ExitStatus;

/**
 * Ends a command with another exit status than 0, after it has told why. A method that Spring Shell
 * calls has no other way to give one.
 */
public final class ExitException extends RuntimeException {
  private final transient ExitStatus status;

  public ExitException(ExitStatus status) {
    super(status.description(), null, false, false);
    this.status = status;
  }

  /** Ends a command with a status, unless all is well. */
  public static void unless(boolean well, ExitStatus status) {
    if (!well) {
      throw new ExitException(status);
    }
  }

  public ExitStatus status() {
    return status;
  }
}
