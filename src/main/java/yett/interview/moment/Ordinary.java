package yett.interview.moment;

import yett.belief.Belief;

/**
 * Whether the ordinary answer to a look counts where nothing is said of it. It does not where what
 * was told speaks against it, such as "as fast as ever" of a gate that was reported slow: then the
 * look is asked, so that nobody denies a complaint by not naming a look.
 */
public final class Ordinary {
  /** Chance from which the ordinary answer is taken in any case (considered judgement). */
  private static final double LIKELY = 0.6;

  /** Least share of its chance at the report that an ordinary answer keeps where it is taken. */
  private static final double KEPT = 2.0 / 3;

  private Ordinary() {}

  public static boolean isTaken(Moment moment, String check) {
    if (moment.judgement().unassumed().contains(check)) {
      return false;
    }
    Belief now = moment.belief();
    double chance = now.predict(check)[0];
    return chance >= LIKELY || chance >= KEPT * Belief.roughly(now.model()).predict(check)[0];
  }
}
