package yett.testing;

import java.util.stream.LongStream;

/**
 * How much a test tries that could try without end. Every run tries enough to find what the test is
 * there to find; {@code mvn verify -Plong} tries much more (docs/testing.md).
 */
public final class Size {
  private static final boolean LONG = Boolean.getBoolean("yett.long");

  private Size() {}

  public static int of(int usual, int most) {
    return LONG ? most : usual;
  }

  /** Seeds from one on. */
  public static LongStream seeds(int usual, int most) {
    return LongStream.rangeClosed(1, of(usual, most));
  }
}
