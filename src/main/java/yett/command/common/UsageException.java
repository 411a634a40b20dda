package yett.command.common;

/** A command line that cannot be understood; the message says what to type instead. */
public class UsageException extends RuntimeException {
  public UsageException(String message) {
    super(message);
  }

  /** Refuses a command line if this condition holds. */
  public static void when(boolean wrong, String message) {
    if (wrong) {
      throw new UsageException(message);
    }
  }
}
