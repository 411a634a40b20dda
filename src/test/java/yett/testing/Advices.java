package yett.testing;

import java.util.List;
import yett.plan.Advice;

/** What comes next, by whoever chooses in another way than the plan and reckons no cost. */
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
