package yett.casebook;

/**
 * The casebook cannot do what was asked. The message is for the person at the screen: where, what,
 * and what to do. Everything written before is unchanged. The message says whether the last entry
 * was written; after a failure of a disk or server at the last moment that may be unknown.
 */
public class CasebookException extends RuntimeException {
  CasebookException(String message) {
    super(message);
  }

  CasebookException(String message, Throwable cause) {
    super(message, cause);
  }
}
