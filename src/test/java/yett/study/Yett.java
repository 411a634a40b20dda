package yett.study;

import java.util.Map;
import yett.belief.Belief;
import yett.plan.Advice;
import yett.plan.Planner;

/** Yett's own plan. */
record Yett(Planner planner) implements Policy {
  @Override
  public String name() {
    return "Yett";
  }

  @Override
  public Advice advise(Belief belief, Planner.Options options, Map<String, String> found) {
    return planner.advise(belief, options);
  }
}
