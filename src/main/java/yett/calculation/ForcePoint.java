package yett.calculation;

import java.util.Optional;
import yett.calculation.ObstructionForce.Verdict;

/**
 * The force of a leaf at one gap and height, averaged over the measurements there, for comparison
 * with the limits of EN 12453 in {@link ObstructionForce} and {@link ForceZone}.
 *
 * @param gap mm left at the impact
 * @param times how often it was measured
 * @param peak N
 * @param above s above 150 N
 * @param left N 5 s after contact; empty if no record lasted that long
 */
public record ForcePoint(int gap, int times, double peak, double above, Optional<Double> left) {
  /** Number of measurements that each point needs. */
  public static final int TIMES = 3;

  /** Gap (mm) from which the limit is that for places where nobody is crushed. */
  private static final int WIDE = 500;

  public ForcePoint {
    Require.positive("gap", gap);
    Require.positive("times", times);
    Require.notNegative("peak", peak);
    Require.notNegative("time above 150 N", above);
  }

  public ForceZone zone() {
    return gap <= WIDE ? ForceZone.CLOSING_GAP : ForceZone.WIDE_GAP;
  }

  /**
   * Missed if any limit is exceeded; open until the point has been measured {@link #TIMES} times.
   */
  public Verdict verdict() {
    boolean missed =
        peak > zone().peakLimit()
            || above > ObstructionForce.DYNAMIC_PERIOD
            || left.filter(f -> f > ObstructionForce.RELEASE_LIMIT).isPresent();
    return missed ? Verdict.MISSED : times < TIMES ? Verdict.OPEN : Verdict.MET;
  }
}
