package yett.calculation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The force of a leaf that runs into an obstruction, as a meter recorded it: samples in rising
 * time. The force between two samples is interpolated linearly. Times in s, forces in N.
 *
 * @throws IllegalArgumentException if there are fewer than two samples or time does not rise
 */
public record ForceCurve(List<ForceSample> samples) {
  public ForceCurve {
    samples = List.copyOf(samples);
    if (samples.size() < 2) {
      throw new IllegalArgumentException("a curve needs two samples, not " + samples.size());
    }
    for (int i = 1; i < samples.size(); i++) {
      Require.positive("step of the time", samples.get(i).time() - samples.get(i - 1).time());
    }
  }

  /** The moment of the greatest force, the first of several. */
  public ForceSample peak() {
    // max() would return the last of equals.
    return samples.stream().min(Comparator.comparingDouble(s -> -s.force())).orElseThrow();
  }

  public double start() {
    return samples.get(0).time();
  }

  public double end() {
    return samples.get(samples.size() - 1).time();
  }

  /** Samples per second, on average. */
  public double rate() {
    return (samples.size() - 1) / (end() - start());
  }

  /** The longest time (s) from one sample to the next. */
  public double largestGap() {
    return IntStream.range(1, samples.size())
        .mapToDouble(i -> samples.get(i).time() - samples.get(i - 1).time())
        .max()
        .orElseThrow();
  }

  /** The first moment at which the force is above a level; empty if it never is. */
  public Optional<Double> firstAbove(double level) {
    for (int i = 0; i < samples.size(); i++) {
      if (samples.get(i).force() > level) {
        return Optional.of(i == 0 ? start() : crossing(i - 1, level));
      }
    }
    return Optional.empty();
  }

  /**
   * The last moment at which the force is above a level; the end of the record if it still is
   * there; empty if it never is.
   */
  public Optional<Double> lastAbove(double level) {
    for (int i = samples.size() - 1; i >= 0; i--) {
      if (samples.get(i).force() > level) {
        return Optional.of(i == samples.size() - 1 ? end() : crossing(i, level));
      }
    }
    return Optional.empty();
  }

  /** The force at a time; before the first and after the last sample, that sample's force. */
  public double at(double time) {
    if (time <= start()) {
      return samples.get(0).force();
    }
    for (int i = 1; i < samples.size(); i++) {
      ForceSample after = samples.get(i);
      if (time <= after.time()) {
        ForceSample before = samples.get(i - 1);
        double share = (time - before.time()) / (after.time() - before.time());
        return before.force() + share * (after.force() - before.force());
      }
    }
    return samples.get(samples.size() - 1).force();
  }

  /** The time at which the line from one sample to the next crosses a level between them. */
  private double crossing(int before, double level) {
    ForceSample from = samples.get(before);
    ForceSample to = samples.get(before + 1);
    double share = (level - from.force()) / (to.force() - from.force());
    return from.time() + share * (to.time() - from.time());
  }
}
