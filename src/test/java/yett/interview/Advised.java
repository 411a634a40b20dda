package yett.interview;

import yett.belief.Belief;
import yett.plan.Advice;
import yett.plan.Planner;

/** Hands the seam by which a test chooses the plan to tests and studies in other packages. */
public final class Advised {
  private Advised() {}

  /** Chooses among what may be done, as the planner does. */
  public interface Chooser {
    Advice advise(Belief belief, Planner.Options options);
  }

  public static Interview interview(Expertise expertise, Chooser chooser) {
    return new Interview(expertise, chooser::advise);
  }
}
