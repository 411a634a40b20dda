package yett.interview.site;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.interview.moment.Moment;
import yett.interview.step.Purpose;
import yett.interview.step.SomeSteps;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteCard;
import yett.knowledge.SiteQuestion;
import yett.rules.Conclusion;

/**
 * Finds the site questions on which a step depends: whether it is possible there, the usual range
 * of its reading, the odds of what it repairs. They are asked only then.
 */
public final class SiteNeeds {
  private final RuleBase base;
  private final Moment moment;

  public SiteNeeds(RuleBase base, Moment moment) {
    this.base = base;
    this.moment = moment;
  }

  /** Site questions on which the present step depends and that nobody has answered yet. */
  public List<SiteQuestion> open() {
    Map<String, String> told = moment.state().told().site();
    Set<String> needed = needed(moment.step());
    return new SiteFacts(base)
        .questions(told).stream()
            .filter(q -> needed.contains(q.id()) && !told.containsKey(q.id()))
            .toList();
  }

  private Set<String> needed(Step step) {
    Set<String> needed = new LinkedHashSet<>();
    step.accept(new Needing(needed)).run();
    return needed;
  }

  /** Collects what a step depends on. */
  private final class Needing implements SomeSteps<Runnable> {
    private final Set<String> needed;

    Needing(Set<String> needed) {
      this.needed = needed;
    }

    /**
     * Equipment assumed missing would never be proved, so it is asked about before the first proof.
     */
    @Override
    public Runnable ask(Step.Ask step) {
      return step.check().kind() == Check.Kind.PROOF
          ? () -> base.proofs().forEach(p -> conditions(p, needed))
          : () -> ofCheck(step.check(), needed);
    }

    @Override
    public Runnable lookRound(Step.LookRound step) {
      return () -> step.looks().forEach(look -> ofCheck(look.check(), needed));
    }

    @Override
    public Runnable mend(Step.Mend step) {
      return () -> ofRepair(step.repair(), needed);
    }

    /** Nobody locks a gate off for a look at what it does not have. */
    @Override
    public Runnable enter(Step.Enter step) {
      return () -> ofPurpose(step.purpose(), needed);
    }

    @Override
    public Runnable leave(Step.Leave step) {
      return () -> ofPurpose(step.purpose(), needed);
    }

    @Override
    public Runnable other(Step step) {
      return () -> {};
    }
  }

  private void ofPurpose(Purpose purpose, Set<String> needed) {
    if (purpose.kind() == Purpose.Kind.REPAIR) {
      ofRepair(base.repairs().get(purpose.card()), needed);
    } else if (purpose.kind() == Purpose.Kind.CHECK
        && base.checks().get(purpose.card()).kind() != Check.Kind.PROOF) {
      ofCheck(base.checks().get(purpose.card()), needed);
    }
  }

  private void ofCheck(Check check, Set<String> needed) {
    conditions(check, needed);
    moment.judgement().expectation(check.id()).ifPresent(e -> needed.addAll(e.reason().site()));
  }

  private void ofRepair(Repair repair, Set<String> needed) {
    conditions(repair, needed);
    for (Conclusion.Odds odds : moment.judgement().odds()) {
      if (repair.removes().containsKey(odds.cause())) {
        needed.addAll(odds.reason().site());
      }
    }
  }

  /**
   * Adds the questions on which a card depends, and those on which these questions depend: the kind
   * of edge is asked only after whether there is an edge.
   */
  private void conditions(SiteCard card, Set<String> needed) {
    for (String question : card.onlyIf().keySet()) {
      if (needed.add(question)) {
        conditions(base.siteQuestions().get(question), needed);
      }
    }
  }
}
