package yett.command.diagnose.sitting;

/** Thrown when the person leaves the case at any prompt. Everything is already stored. */
public final class CaseLeftException extends RuntimeException {
  public CaseLeftException() {
    super("put aside", null, false, false);
  }
}
