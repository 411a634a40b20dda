package yett.interview.search;

import java.util.Collection;
import java.util.List;
import yett.belief.Belief;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.plan.Telling;

/** Chooses among the work that is allowed. The fixed order of the steps keeps any choice safe. */
public interface Adviser {
  /** The best among these checks and repairs. */
  Advice advise(Belief belief, Planner.Options options);

  /** The information in looks that could be made together, the most informative first. */
  default List<Telling.Told> tells(Belief belief, Collection<String> checks) {
    return Telling.of(belief, checks);
  }
}
