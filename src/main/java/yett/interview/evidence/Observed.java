package yett.interview.evidence;

import java.util.List;
import yett.belief.Observation;
import yett.knowledge.Check;
import yett.rules.Conclusion.Finding;

/** The evidence in what an answer means. */
public final class Observed {
  private Observed() {}

  /** The evidence in a finding on this check. */
  public static Observation of(Finding finding, Check check) {
    return of(check, finding.weights(), finding.outcome(), finding.also());
  }

  static Observation of(Check check, List<Double> weights, String outcome, List<String> also) {
    Observation observation = new Observation(check.id(), weights);
    if (also.isEmpty()) {
      return observation;
    }
    List<Integer> others = also.stream().map(check::indexOf).toList();
    return observation.with(Observation.Ticks.said(check.indexOf(outcome), others, weights));
  }
}
