package yett.interview;

import java.util.List;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * Whether one state of the work goes on into another without being left: whoever locks off more
 * than before brings no power back first, and puts no cover on only to take it off again.
 */
final class KeptOff {
  private KeptOff() {}

  /**
   * Whether the first is without mains, or no more than open while the second lets nothing run; and
   * the second rules out whatever the first rules out.
   */
  static boolean between(SetUp from, SetUp into, RuleBase base) {
    SetUp mains = base.setUps().get(SetUp.MAINS_AS_FOUND);
    SetUp able = base.setUps().get(SetUp.ABLE_TO_RUN);
    List<SetUp> ruledOut =
        base.setUps().values().stream()
            .filter(SetUp::isCondition)
            .filter(condition -> excludes(from, condition))
            .toList();
    boolean open =
        ruledOut.stream().map(SetUp::id).toList().equals(List.of(SetUp.COVERS_ON))
            && able != null
            && excludes(into, able);
    return mains != null
        && (excludes(from, mains) || open)
        && ruledOut.stream().allMatch(condition -> excludes(into, condition));
  }

  private static boolean excludes(SetUp one, SetUp other) {
    return one.excludes().contains(other.id()) || other.excludes().contains(one.id());
  }
}
