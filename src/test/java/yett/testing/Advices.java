package yett.testing;

import java.util.List;
import yett.plan.Advice;

/**
 * Makes advice for tests that choose the next step themselves instead of using the plan. All costs
 * are 0.
 */
public final class Advices {
  private Advices() {}

  public static Advice asking(String check) {
    List<Advice.Candidate> candidates = List.of(new Advice.Candidate(check, 0, 0));
    return new Advice(Advice.Kind.ASK, candidates, List.of(), 0, 0, false);
  }

  public static Advice repairing(String repair) {
    List<Advice.Job> jobs = List.of(new Advice.Job(repair, 1));
    return new Advice(Advice.Kind.REPAIR, List.of(), jobs, 0, 0, false);
  }

  public static Advice nothing() {
    return new Advice(Advice.Kind.NOTHING_LEFT, List.of(), List.of(), 0, 0, false);
  }
}
