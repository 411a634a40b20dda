package yett.casebook;

/**
 * The server with the casebook does not answer. As far as is known, nothing was done. Trying again
 * does no harm, because nothing takes effect twice.
 */
public final class CasebookUnreachable extends CasebookException {
  CasebookUnreachable(String message, Throwable cause) {
    super(message, cause);
  }
}
