package yett.calculation;

import java.util.Optional;
import yett.calculation.ObstructionForce.Verdict;

/**
 * The force of a leaf at one gap and height, averaged over the times it was measured there, held
 * against the limits of EN 12453 as {@link ObstructionForce} and {@link ForceZone} have them.
 *
 * @param gap mm left when it struck
 * @param times how often it was measured
 * @param peak N
 * @param above s above 150 N
 * @param left N 5 s after contact; empty if nobody recorded so long
 */
public record ForcePoint(int gap, int times, double peak, double above, Optional<Double> left) {
  /** So often each point is measured. */
  public static final int TIMES = 3;

  /** mm; the gap from which nobody is crushed. */
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

  /** Missed if any limit is; open until it was measured often enough. */
  public Verdict verdict() {
    boolean missed =
        peak > zone().peakLimit()
            || above > ObstructionForce.DYNAMIC_PERIOD
            || left.filter(f -> f > ObstructionForce.RELEASE_LIMIT).isPresent();
    return missed ? Verdict.MISSED : times < TIMES ? Verdict.OPEN : Verdict.MET;
  }
}
