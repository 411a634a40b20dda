package yett.casebook;

/**
 * The server that keeps the casebook does not answer. What was asked has not been done as far as is
 * known; asking again does no harm, because nothing is done twice.
 */
public final class CasebookUnreachable extends CasebookException {
  CasebookUnreachable(String message, Throwable cause) {
    super(message, cause);
  }
}
