package yett.command.diagnose.conversation;

/** Thrown when a call is over and somebody else continues the case. */
public final class DispatchedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public DispatchedException() {
    super("dispatched", null, false, false);
  }
}
