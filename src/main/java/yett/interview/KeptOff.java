package yett.interview;

import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * Whether one state of the work goes on into another with the mains still locked off: whoever locks
 * off more than before brings no power back first.
 */
final class KeptOff {
  private KeptOff() {}

  /** Whether both are without mains, and the second rules out whatever the first rules out. */
  static boolean between(SetUp from, SetUp into, RuleBase base) {
    SetUp mains = base.setUps().get(SetUp.MAINS_AS_FOUND);
    return mains != null
        && excludes(from, mains)
        && base.setUps().values().stream()
            .filter(SetUp::isCondition)
            .filter(condition -> excludes(from, condition))
            .allMatch(condition -> excludes(into, condition));
  }

  private static boolean excludes(SetUp one, SetUp other) {
    return one.excludes().contains(other.id()) || other.excludes().contains(one.id());
  }
}
