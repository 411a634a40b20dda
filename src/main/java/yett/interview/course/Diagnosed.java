package yett.interview.course;

import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;

/** Whether a case has anything to reason from, so that every page says the same of it. */
public final class Diagnosed {
  private Diagnosed() {}

  /** False if a danger came before all questions, or if nobody could tell anything. */
  public static boolean is(Moment moment, RuleBase base) {
    return moment.state().told().complaints().filter(c -> !c.isEmpty()).isPresent()
        || moment.state().answers().stream()
            .filter(a -> a.answer().tells())
            .map(a -> base.checks().get(a.check()))
            .anyMatch(c -> c != null && !c.danger());
  }
}
