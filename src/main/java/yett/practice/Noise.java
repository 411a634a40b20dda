package yett.practice;

import java.util.SplittableRandom;

/**
 * Chance that can be had again: the same seed and the same words give the same number, in whatever
 * order they are asked for.
 */
record Noise(long seed) {
  /** Evenly from 0 to 1. */
  double even(String what) {
    return random(what).nextDouble();
  }

  /** Normally distributed, mean 0, standard deviation 1. */
  double normal(String what) {
    return random(what).nextGaussian();
  }

  /** The words mixed into the seed: FNV-1a, 64 bits. */
  private SplittableRandom random(String what) {
    long hash = 0xcbf29ce484222325L ^ seed;
    for (int i = 0; i < what.length(); i++) {
      hash = (hash ^ what.charAt(i)) * 0x100000001b3L;
    }
    return new SplittableRandom(hash);
  }
}
