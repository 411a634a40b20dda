package yett.shell;

/** The person leaves the case, from whatever prompt; everything is stored already. */
final class PutAside extends RuntimeException {
  PutAside() {
    super("put aside", null, false, false);
  }
}
