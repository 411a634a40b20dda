package yett.command.common;

import org.springframework.shell.core.command.ExitStatus;

/**
 * Ends a command with an exit status other than 0, after the command has said why. A method that
 * Spring Shell calls has no other way to set the status.
 */
public final class ExitException extends RuntimeException {
  private final transient ExitStatus status;

  public ExitException(ExitStatus status) {
    super(status.description(), null, false, false);
    this.status = status;
  }

  /** Ends a command with this status unless all is well. */
  public static void unless(boolean well, ExitStatus status) {
    if (!well) {
      throw new ExitException(status);
    }
  }

  public ExitStatus status() {
    return status;
  }
}
