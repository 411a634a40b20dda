package yett.command.diagnose;

/** The person leaves the case, from whatever prompt; everything is stored already. */
public final class PutAside extends RuntimeException {
  public PutAside() {
    super("put aside", null, false, false);
  }
}
