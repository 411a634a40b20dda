package yett.review;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.belief.CausalModel;
import yett.interview.course.Interview;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Finding;

/**
 * Reads from a closed case what was wrong and what the gate showed. It accepts only cases in which
 * the gate ran again and the belief then leaves no doubt about the cause.
 */
public final class CaseSettler {
  /** Chance from which a cause counts as present. */
  private static final double THERE = 0.9;

  /**
   * Chance below which a cause counts as absent; a case with a cause between the two is left out.
   */
  private static final double NOT_THERE = 0.1;

  private final Interview interview;
  private final RuleBase base;

  public CaseSettler(Interview interview) {
    this.interview = interview;
    this.base = interview.expertise().base();
  }

  /** What the case shows; empty if it is not settled. */
  public Optional<SettledCase> settle(List<Entry> entries) {
    CaseState state = CaseState.of(entries);
    boolean cured =
        state.closed().filter(Ending::isCured).isPresent()
            && state.work().deeds().stream().anyMatch(d -> d.event() instanceof Event.Repaired);
    if (!cured) {
      return Optional.empty();
    }
    Moment moment = interview.asFarAsPossible(entries, state.role());
    if (!moment.apart().isEmpty()) {
      return Optional.empty(); // an event set apart may be the decisive one
    }
    Optional<Set<String>> causes = causes(moment);
    return causes.map(c -> new SettledCase(c, seen(moment), shares(moment)));
  }

  private static Optional<Set<String>> causes(Moment moment) {
    double[] chances = moment.belief().atCallOut();
    List<String> ids = moment.belief().model().causes();
    Set<String> there = new LinkedHashSet<>();
    for (int c = 0; c < chances.length; c++) {
      if (chances[c] >= THERE) {
        there.add(ids.get(c));
      } else if (chances[c] > NOT_THERE) {
        return Optional.empty();
      }
    }
    return there.isEmpty() || there.contains(Cause.NOT_IN_RULE_BASE)
        ? Optional.empty()
        : Optional.of(there);
  }

  private Map<String, Integer> seen(Moment moment) {
    Map<String, Integer> seen = new HashMap<>();
    for (CaseState.Answered answered : moment.state().answers()) {
      Check check = base.checks().get(answered.check());
      boolean reliable = check != null && check.reliability().getOrDefault(answered.by(), 1.0) >= 1;
      if (answered.epoch() == 0 && reliable) {
        moment
            .judgement()
            .finding(answered.event())
            .map(Finding::outcome)
            .map(check::indexOf)
            .filter(i -> i >= 0)
            .ifPresent(i -> seen.put(check.id(), i));
      }
    }
    List<String> said = moment.state().told().complaints().orElse(List.of());
    base.complaints().stream()
        .filter(c -> !moment.judgement().unavailable().contains(c.id()))
        .forEach(c -> seen.put(c.id(), said.contains(c.id()) ? c.indexOf(Check.SAID) : 0));
    return seen;
  }

  private Map<String, Double> shares(Moment moment) {
    return shares(interview.expertise().model(moment.judgement().oddsFactors()));
  }

  /** For each cause, how often it arises by itself at a gate that has at least one cause. */
  static Map<String, Double> shares(CausalModel model) {
    double none = 1;
    for (int c = 0; c < model.size(); c++) {
      none *= 1 - model.prior(c);
    }
    Map<String, Double> shares = new HashMap<>();
    for (int c = 0; c < model.size(); c++) {
      if (model.prior(c) > 0) {
        shares.merge(model.causes().get(model.told(c)), model.prior(c) / (1 - none), Double::sum);
      }
    }
    return shares;
  }
}
