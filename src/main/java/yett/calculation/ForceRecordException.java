package yett.calculation;

/** A force record that cannot be read. The message says where, what is wrong and what to do. */
public final class ForceRecordException extends RuntimeException {
  ForceRecordException(String message) {
    super(message);
  }
}
