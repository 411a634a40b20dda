package yett.calculation;

import java.util.Optional;

/**
 * A recorded force judged by the limits of EN 12453: the peak by its zone; not above 150 N for
 * longer than 0.75 s; not above 25 N once 5 s have gone. The first two limits of time are published
 * in summaries of the standard by a trade federation and a test house; that the 5 s count from the
 * contact, and the contact from 25 N, where the meter's range begins, is from memory.
 *
 * <p>Each limit is met, missed, or open, as the record may end too early to tell. One record is no
 * test of a gate: each point is measured three times and averaged, at three gaps and three heights.
 *
 * @param curve what the meter recorded
 * @param zone where it was recorded
 */
public record ObstructionForce(ForceCurve curve, ForceZone zone) {
  /** N that may stay on no longer than {@link #DYNAMIC_PERIOD}. */
  public static final double STATIC_LIMIT = 150;

  /** s. */
  public static final double DYNAMIC_PERIOD = 0.75;

  /** N left when {@link #RELEASE_PERIOD} is over; also where the range of the meter begins. */
  public static final double RELEASE_LIMIT = 25;

  /** s. */
  public static final double RELEASE_PERIOD = 5;

  /**
   * Samples per second of the meter that EN 12453 describes are 200; clocks of meters are not so
   * exact that a few less would be too few.
   */
  public static final double LEAST_RATE = 196;

  /**
   * s from one sample to the next at most: the 5 ms of such a meter, and 1 ms in which time stamps
   * are often given.
   */
  public static final double LARGEST_GAP = 0.006 + 1e-9;

  /** N that a meter with nothing on it may show; considered judgement. */
  public static final double ZERO = 5;

  /** N at which the range of that meter ends. */
  public static final double METER_RANGE = 2000;

  /** What can be said of a limit, or of all. */
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

  /** Whether the force was down to 150 N in time. */
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

  /** The greatest force (N) from 5 s after the contact on; empty if the record ends before. */
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

  /** Whether the person was let go in time. */
  public Verdict release() {
    if (contact().isEmpty()) {
      return Verdict.MET;
    }
    return afterRelease()
        .map(force -> force > RELEASE_LIMIT ? Verdict.MISSED : Verdict.MET)
        .orElse(Verdict.OPEN);
  }

  /** Open if a peak can hide between two samples, wherever in the record they stand. */
  public Verdict sampling() {
    return curve.rate() < LEAST_RATE || curve.largestGap() > LARGEST_GAP
        ? Verdict.OPEN
        : Verdict.MET;
  }

  /** Open if the first sample already shows a force: what came before is not known. */
  public Verdict beginning() {
    return curve.samples().get(0).force() > ZERO ? Verdict.OPEN : Verdict.MET;
  }

  /** Open if the meter shows a pull before the contact: every force in the record is too small. */
  public Verdict zeroing() {
    double contact = contact().orElse(Double.POSITIVE_INFINITY);
    double[] before =
        curve.samples().stream()
            .takeWhile(sample -> sample.time() < contact)
            .mapToDouble(ForceSample::force)
            .sorted()
            .toArray();
    // The median: a meter's noise, or the climb to the contact, moves it least.
    return before.length > 0 && before[before.length / 2] < -ZERO ? Verdict.OPEN : Verdict.MET;
  }

  /** Missed if a limit is, else open if one is or the record is not fit to tell, else met. */
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
