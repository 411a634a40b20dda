package yett.testing;

import java.util.stream.LongStream;

/**
 * How many examples a test tries that could try any number. Every run tries enough to find what the
 * test is meant to find; {@code mvn verify -Plong} tries many more (docs/testing.md).
 */
public final class Size {
  private static final boolean LONG = Boolean.getBoolean("yett.long");

  private Size() {}

  public static int of(int usual, int most) {
    return LONG ? most : usual;
  }

  /** Seeds from 1 on. */
  public static LongStream seeds(int usual, int most) {
    return LongStream.rangeClosed(1, of(usual, most));
  }
}
