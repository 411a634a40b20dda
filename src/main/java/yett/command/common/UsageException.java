package yett.command.common;

/** A command line that cannot be understood; the message says what to type instead. */
public class UsageException extends RuntimeException {
  public UsageException(String message) {
    super(message);
  }
}
