package yett.bundle;

/** A bundle or a key cannot be used; the message says why and what to do. */
public final class BundleException extends RuntimeException {
  BundleException(String message) {
    super(message);
  }
}
