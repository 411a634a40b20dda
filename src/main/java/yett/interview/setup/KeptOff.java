package yett.interview.setup;

import java.util.List;
import java.util.stream.Stream;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * Decides whether one set-up can follow another without leaving it first. For example, a person who
 * isolates more than before need not restore the power first, nor refit a cover only to take it off
 * again.
 */
public final class KeptOff {
  private KeptOff() {}

  /**
   * Whether {@code into} can follow {@code from} directly: {@code from} is without mains, or is no
   * more than an opened cover while {@code into} lets nothing run; and {@code into} excludes
   * everything that {@code from} excludes. Between two states with the mains off and the cover off,
   * mains and cover stay off, even if the batteries come back.
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
        && (isOpenWithoutMains(from, base) && isOpenWithoutMains(into, base)
            || (excludes(from, mains) || open)
                && ruledOut.stream().allMatch(condition -> excludes(into, condition)));
  }

  /** Whether the operator has no power, or not that of the mains, in this set-up. */
  public static boolean power(String setUp, RuleBase base) {
    return Stream.of(SetUp.POWERED, SetUp.MAINS_AS_FOUND)
        .map(base.setUps()::get)
        .anyMatch(c -> c != null && excludes(base.setUps().get(setUp), c));
  }

  private static boolean isOpenWithoutMains(SetUp setUp, RuleBase base) {
    return Stream.of(SetUp.MAINS_AS_FOUND, SetUp.COVERS_ON)
        .map(base.setUps()::get)
        .allMatch(condition -> condition != null && excludes(setUp, condition));
  }

  private static boolean excludes(SetUp one, SetUp other) {
    return one.excludes().contains(other.id()) || other.excludes().contains(one.id());
  }
}
