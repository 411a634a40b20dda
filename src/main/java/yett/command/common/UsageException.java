package yett.command.common;

/** A command line that cannot be understood; the message says what to type instead. */
public class UsageException extends RuntimeException {
  public UsageException(String message) {
    super(message);
  }

  /** Refuses a command line of which something is so that must not be. */
  public static void when(boolean wrong, String message) {
    if (wrong) {
      throw new UsageException(message);
    }
  }
}
