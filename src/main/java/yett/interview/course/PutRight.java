package yett.interview.course;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yett.interview.course.Interview.RankedCause;
import yett.interview.moment.Moment;
import yett.knowledge.Cause;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/** Which causes were put right in a case, so that every page says the same of them. */
public final class PutRight {
  /** A smaller chance at the call-out is not worth a line. */
  private static final double NAMED = 0.05;

  /** Above this share of its chance at the call-out, a cause may as well be there still. */
  private static final double STILL = 0.5;

  private PutRight() {}

  /** The causes that done repairs remove, with their chances at the call-out. */
  public static List<RankedCause> causes(Moment moment, RuleBase base) {
    Set<String> removed = new HashSet<>();
    for (String id : moment.state().work().repairs()) {
      Repair repair = base.repairs().get(id);
      if (repair != null) {
        removed.addAll(repair.removes().keySet());
      }
    }
    double[] left = moment.belief().remaining();
    List<String> ids = moment.belief().model().causes();
    return Interview.ranking(moment, base).stream()
        .filter(r -> !r.cause().id().equals(Cause.NOTHING_WRONG)) // was explained, not put right
        .filter(r -> removed.contains(r.cause().id()) && r.chance() >= NAMED)
        .filter(r -> left[ids.indexOf(r.cause().id())] < STILL * r.chance())
        .toList();
  }
}
