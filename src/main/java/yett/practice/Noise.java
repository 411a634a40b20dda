package yett.practice;

import java.util.SplittableRandom;

/**
 * Reproducible random numbers: the same seed and the same words give the same number, in whatever
 * order they are asked for.
 */
record Noise(long seed) {
  /** A uniformly distributed number from 0 to 1. */
  double even(String what) {
    return random(what).nextDouble();
  }

  /** A normally distributed number with mean 0 and standard deviation 1. */
  double normal(String what) {
    return random(what).nextGaussian();
  }

  /** A generator seeded with the seed and the words, mixed by FNV-1a, 64 bits. */
  private SplittableRandom random(String what) {
    long hash = 0xcbf29ce484222325L ^ seed;
    for (int i = 0; i < what.length(); i++) {
      hash = (hash ^ what.charAt(i)) * 0x100000001b3L;
    }
    return new SplittableRandom(hash);
  }
}
