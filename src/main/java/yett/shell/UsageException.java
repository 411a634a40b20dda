package yett.shell;

/** A command line that cannot be understood; the message says what to type instead. */
class UsageException extends RuntimeException {
  UsageException(String message) {
    super(message);
  }
}
