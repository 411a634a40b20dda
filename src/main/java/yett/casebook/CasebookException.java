package yett.casebook;

/**
 * The casebook cannot do what was asked. The message is for the person at the screen: where, what,
 * and what to do. Whatever was being written has not been written; all before it is as it was.
 */
public class CasebookException extends RuntimeException {
  CasebookException(String message) {
    super(message);
  }

  CasebookException(String message, Throwable cause) {
    super(message, cause);
  }
}
