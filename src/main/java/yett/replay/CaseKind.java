package yett.replay;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import yett.knowledge.Cause;
import yett.knowledge.RuleBase;

/** Reasons why a case is hard. A case may be of several kinds; most are of none. */
public enum CaseKind {
  TWO_FAULTS("two faults at once"),
  ROOT_AND_CONSEQUENCE("a cause and what it brought about"),
  MISLEADING("a complaint that points elsewhere"),
  NOTHING_WRONG("nothing wrong with the machine"),
  DANGER("people in danger");

  /** Area of the causes that are not faults of the machine. */
  private static final String USE = "use";

  private final String words;

  CaseKind(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** The kinds of a case, from the true causes in its file. */
  public static Set<CaseKind> of(RecordedCase recorded, RuleBase base) {
    Set<CaseKind> kinds = EnumSet.noneOf(CaseKind.class);
    if (recorded.stop().isPresent()) {
      kinds.add(DANGER);
    }
    if (recorded.misleads()) {
      kinds.add(MISLEADING);
    }
    List<String> truth = recorded.truth().orElse(List.of());
    if (recorded.truth().isPresent() && truth.stream().allMatch(c -> ordinaryUse(base, c))) {
      kinds.add(NOTHING_WRONG);
    }
    if (truth.size() > 1) {
      kinds.add(
          truth.stream().anyMatch(c -> consequencesOneOf(base, c, truth))
              ? ROOT_AND_CONSEQUENCE
              : TWO_FAULTS);
    }
    return kinds;
  }

  private static boolean ordinaryUse(RuleBase base, String cause) {
    return base.causes().get(cause).area().equals(USE) && !cause.equals(Cause.NOT_IN_RULE_BASE);
  }

  /** Whether a cause brings about one of these causes, directly or through others. */
  private static boolean consequencesOneOf(RuleBase base, String root, List<String> causes) {
    Set<String> reached = base.withConsequences(Set.of(root), (from, to, chance) -> true);
    return causes.stream().anyMatch(c -> !c.equals(root) && reached.contains(c));
  }
}
