package yett.study;

import java.util.Map;
import yett.belief.Belief;
import yett.plan.Advice;
import yett.plan.Planner;

/** A way of choosing what comes next. */
interface Policy {
  /** In a few words, as the page names it. */
  String name();

  /**
   * @param found outcomes since the last repair, by check; empty unless the policy follows answers
   */
  Advice advise(Belief belief, Planner.Options options, Map<String, String> found);

  /** Whether it goes by answers rather than by belief. */
  default boolean followsAnswers() {
    return false;
  }
}
