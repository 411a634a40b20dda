package yett.casebook;

/**
 * The casebook cannot do what was asked. The message is for the person at the screen: where, what,
 * and what to do. All that was written before is as it was. Whether the last entry was written, the
 * message says: a disk or a server that fails in the last moment may leave that open.
 */
public class CasebookException extends RuntimeException {
  CasebookException(String message) {
    super(message);
  }

  CasebookException(String message, Throwable cause) {
    super(message, cause);
  }
}
