package yett.calculation;

import java.util.Optional;

/**
 * Judges a recorded force by the limits of EN 12453: the peak limit of its zone; not above 150 N
 * for longer than 0.75 s; not above 25 N after 5 s. The first two limits of time are published in
 * summaries of the standard by a trade federation and a test house; it is from memory that the 5 s
 * count from the contact, and that contact is where the force passes 25 N, the start of the meter's
 * range.
 *
 * <p>Each limit is met or missed, or open if the record ends too early. One record is not a test of
 * a gate: each point is measured three times and averaged, at three gaps and three heights.
 *
 * @param curve what the meter recorded
 * @param zone where it was recorded
 */
public record ObstructionForce(ForceCurve curve, ForceZone zone) {
  /** Force (N) that may last no longer than {@link #DYNAMIC_PERIOD}. */
  public static final double STATIC_LIMIT = 150;

  /** Longest time (s) above {@link #STATIC_LIMIT}. */
  public static final double DYNAMIC_PERIOD = 0.75;

  /** Highest force (N) after {@link #RELEASE_PERIOD}; also the start of the meter's range. */
  public static final double RELEASE_LIMIT = 25;

  /** Time (s) from contact to release. */
  public static final double RELEASE_PERIOD = 5;

  /**
   * Lowest sample rate (1/s) accepted. EN 12453 describes a meter with 200; the margin allows for
   * an inexact clock.
   */
  public static final double LEAST_RATE = 196;

  /**
   * Longest time (s) accepted between two samples: 5 ms for such a meter, and 1 ms for time stamps
   * rounded to a millisecond.
   */
  public static final double LARGEST_GAP = 0.006 + 1e-9;

  /** Largest force (N) that an unloaded meter may show; considered judgement. */
  public static final double ZERO = 5;

  /** Upper end (N) of that meter's range. */
  public static final double METER_RANGE = 2000;

  /** The result for one limit, or for all together. */
  public enum Verdict {
    MET,
    MISSED,
    OPEN
  }

  /** The moment (s) of contact: the force rises above 25 N; empty if it never does. */
  public Optional<Double> contact() {
    return curve.firstAbove(RELEASE_LIMIT);
  }

  public Verdict peak() {
    return curve.peak().force() > zone.peakLimit() ? Verdict.MISSED : Verdict.MET;
  }

  /** Time (s) from the first to the last moment above 150 N; 0 if there is none. */
  public double dynamicPeriod() {
    return curve
        .firstAbove(STATIC_LIMIT)
        .map(first -> curve.lastAbove(STATIC_LIMIT).orElseThrow() - first)
        .orElse(0.0);
  }

  /** Whether the force fell to 150 N in time. */
  public Verdict dynamic() {
    if (dynamicPeriod() > DYNAMIC_PERIOD) {
      return Verdict.MISSED;
    }
    return curve
        .firstAbove(STATIC_LIMIT)
        .filter(first -> curve.end() < first + DYNAMIC_PERIOD)
        .map(first -> Verdict.OPEN)
        .orElse(Verdict.MET);
  }

  /** The greatest force (N) from 5 s after contact; empty if the record ends before that. */
  public Optional<Double> afterRelease() {
    double due = contact().orElse(curve.start()) + RELEASE_PERIOD;
    if (curve.end() < due) {
      return Optional.empty();
    }
    double later =
        curve.samples().stream()
            .filter(sample -> sample.time() > due)
            .mapToDouble(ForceSample::force)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    return Optional.of(Math.max(curve.at(due), later));
  }

  /** Whether the force fell to the release limit in time. */
  public Verdict release() {
    if (contact().isEmpty()) {
      return Verdict.MET;
    }
    return afterRelease()
        .map(force -> force > RELEASE_LIMIT ? Verdict.MISSED : Verdict.MET)
        .orElse(Verdict.OPEN);
  }

  /** Open if the samples are so far apart anywhere in the record that a peak could be missed. */
  public Verdict sampling() {
    return curve.rate() < LEAST_RATE || curve.largestGap() > LARGEST_GAP
        ? Verdict.OPEN
        : Verdict.MET;
  }

  /** Open if the first sample already shows a force, because what came before is unknown. */
  public Verdict beginning() {
    return curve.samples().get(0).force() > ZERO ? Verdict.OPEN : Verdict.MET;
  }

  /** Open if the meter shows a pull before contact: then every recorded force is too small. */
  public Verdict zeroing() {
    double contact = contact().orElse(Double.POSITIVE_INFINITY);
    double[] before =
        curve.samples().stream()
            .takeWhile(sample -> sample.time() < contact)
            .mapToDouble(ForceSample::force)
            .sorted()
            .toArray();
    // The median, because noise and the rise to contact affect it least.
    return before.length > 0 && before[before.length / 2] < -ZERO ? Verdict.OPEN : Verdict.MET;
  }

  /**
   * Missed if any limit is missed; else open if any is open or the record is unfit to judge; else
   * met.
   */
  public Verdict verdict() {
    if (contact().isEmpty()) {
      return Verdict.OPEN;
    }
    Verdict worst = Verdict.MET;
    for (Verdict verdict :
        new Verdict[] {peak(), dynamic(), release(), sampling(), beginning(), zeroing()}) {
      if (verdict == Verdict.MISSED) {
        return verdict;
      }
      worst = verdict == Verdict.OPEN ? verdict : worst;
    }
    return worst;
  }
}
