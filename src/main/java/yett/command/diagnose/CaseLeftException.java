package yett.command.diagnose;

/** The person leaves the case, from whatever prompt; everything is stored already. */
public final class CaseLeftException extends RuntimeException {
  public CaseLeftException() {
    super("put aside", null, false, false);
  }
}
