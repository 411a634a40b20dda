package yett.belief;

import java.util.List;

/**
 * How a gate ran when it was tried, told by what was reported.
 *
 * @param how what can be said of the run
 * @param told complaints that were still there when it was last tried, or made at the call-out
 * @param left for each of these, whether it is still there; only of a gate that {@link How#SHOWED}
 */
public record Retest(How how, List<Observation> told, List<Boolean> left) {
  /** What can be said of a run. */
  public enum How {
    /** It ran as it should. */
    RAN,
    /** It failed, and everybody saw which complaints are left. */
    SHOWED,
    /** It failed, not in all that was reported. */
    OTHERWISE,
    /** It failed, hard to say how. */
    FAILED
  }

  /** A gate that works now and then fails a try although nothing is wrong any more. */
  static final double SLIP = 0.005;

  /**
   * Chance that a gate from which all complaints have gone, though a cause is left that mostly
   * shows, ran well all the same (considered judgement).
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

  /** A run of which nothing but its success is known. */
  public static Retest ran(boolean cured) {
    return of(cured ? How.RAN : How.FAILED, List.of());
  }

  public static Retest of(How how, List<Observation> told) {
    return new Retest(how, told, List.of());
  }

  /** A failed run that did all of this. */
  public static Retest same(List<Observation> told) {
    return told.isEmpty()
        ? ran(false)
        : new Retest(How.SHOWED, told, told.stream().map(t -> true).toList());
  }

  /**
   * Chance of what was seen.
   *
   * @param shows chance that the causes that are left show at a try at all
   * @param again for each complaint, the chance that it is there again if they show
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
