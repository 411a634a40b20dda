package yett.calculation;

/** A recorded force that cannot be read; the message says where, what and what to do. */
public final class ForceRecordException extends RuntimeException {
  ForceRecordException(String message) {
    super(message);
  }
}
