package yett.belief;

import java.util.List;

/**
 * The result of a retest, in terms of the complaints.
 *
 * @param how what is known about the run
 * @param told complaints that were still there at the last try, or that were made at the call-out
 * @param left for each of these, whether it is still there; only with {@link How#SHOWED}
 */
public record Retest(How how, List<Observation> told, List<Boolean> left) {
  /** What is known about a run. */
  public enum How {
    /** It ran as it should. */
    RAN,
    /** It failed, and it is known which complaints are left. */
    SHOWED,
    /** It failed, but not with everything that was reported. */
    OTHERWISE,
    /** It failed, and nobody could say how. */
    FAILED
  }

  /** Chance that a gate without a fault fails a try. */
  static final double SLIP = 0.005;

  /**
   * Chance that a run without any of the complaints was a good one although a cause is left that
   * usually shows (considered judgement).
   */
  static final double RAN_WELL = 0.7;

  public Retest {
    told = List.copyOf(told);
    left = List.copyOf(left);
    if (how == How.SHOWED && left.size() != told.size()) {
      throw new IllegalArgumentException(
          left.size() + " of " + told.size() + " complaints are told to be left or gone");
    }
  }

  /** A run of which only success or failure is known. */
  public static Retest ran(boolean cured) {
    return of(cured ? How.RAN : How.FAILED, List.of());
  }

  public static Retest of(How how, List<Observation> told) {
    return new Retest(how, told, List.of());
  }

  /** A failed run with all of these complaints. */
  public static Retest same(List<Observation> told) {
    return told.isEmpty()
        ? ran(false)
        : new Retest(How.SHOWED, told, told.stream().map(t -> true).toList());
  }

  /**
   * Chance of this result.
   *
   * @param shows chance that the remaining causes show at all at a try
   * @param again for each complaint, the chance that it appears again if they show
   */
  double chance(double shows, double[] again) {
    double all = 1;
    double none = 1;
    double seen = 1;
    for (int c = 0; c < again.length; c++) {
      all *= again[c];
      none *= 1 - again[c];
      seen *= how != How.SHOWED ? 1 : left.get(c) ? again[c] : 1 - again[c];
    }
    double ran = again.length == 0 ? 1 - shows : 1 - shows + shows * none * RAN_WELL;
    return switch (how) {
      case RAN -> ran;
      case SHOWED -> shows * seen;
      case OTHERWISE -> again.length == 0 ? shows : shows * (1 - all);
      case FAILED -> 1 - ran;
    };
  }
}
