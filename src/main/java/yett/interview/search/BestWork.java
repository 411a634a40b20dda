package yett.interview.search;

import static java.util.Optional.empty;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.moment.Present;
import yett.interview.setup.SetUpSteps;
import yett.interview.state.CaseState;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Planner;

/**
 * Chooses the most useful check or repair among the work that is possible now, and makes a step of
 * it.
 */
public record BestWork(Present present, Adviser adviser, SetUpSteps steps) {
  /** The most useful step; checks that were put off come last. Empty if nothing is worth doing. */
  public Optional<Step> best(boolean cured) {
    return best(checks(false), cured)
        .or(() -> Optional.of(putOff()).filter(p -> !p.isEmpty()).flatMap(p -> best(p, cured)));
  }

  private Optional<Step> best(Set<String> checks, boolean cured) {
    Set<String> repairs = repairs();
    return step(committed(advise(checks, repairs, cured), repairs), cured);
  }

  /**
   * The check that is most useful for choosing among these repairs, whoever may do them; empty if
   * none is.
   *
   * @param putOff whether to choose among checks that were put off
   */
  Optional<Step> question(Set<String> repairs, boolean putOff) {
    return question(repairs, putOff, advice -> advice);
  }

  /**
   * Chooses a check as {@link #question(Set, boolean)} does, with a change to the plan's advice.
   *
   * @param taken returns the advice to follow for the advice given
   */
  Optional<Step> question(Set<String> repairs, boolean putOff, UnaryOperator<Advice> taken) {
    Set<String> checks = putOff ? putOff() : checks(false);
    if (checks.isEmpty()) {
      return empty();
    }
    Advice advice =
        taken.apply(
            adviser.advise(
                present.belief(),
                new Planner.Options(checks, repairs, present.state().work().setUps(), false)));
    return advice.kind() == Advice.Kind.ASK ? step(advice, false) : empty();
  }

  /** The work that is possible at a moment. */
  public static BestWork at(Moment moment, RuleBase base, Planner planner) {
    Present present = new Present(base, moment.state(), moment.judgement(), moment.believed());
    return new BestWork(present, planner::advise, new SetUpSteps(present, planner));
  }

  private Optional<Step> step(Advice advice, boolean cured) {
    return switch (advice.kind()) {
      case ASK -> Optional.of(ask(advice, cured));
      case REPAIR ->
          Optional.of(
              steps.mend(
                  present.base().repairs().get(advice.jobs().get(0).repair()),
                  Optional.of(advice),
                  Occasion.of(cured ? Occasion.Kind.LASTING : Occasion.Kind.WORTH)));
      case NOTHING_LEFT -> empty();
    };
  }

  /** The step for a check: a look together with others at its place, or the check alone. */
  private Step ask(Advice advice, boolean cured) {
    Check check = present.base().checks().get(advice.candidates().get(0).check());
    Occasion occasion = Occasion.of(occasion(check.id(), cured));
    if (isStuck(occasion)) {
      return new Step.TakeStock(Suspects.left(present, repairs()), check);
    }
    return new LookRounds(present, adviser, steps)
        .around(check, checks(false), Optional.of(advice), occasion)
        .orElseGet(() -> steps.ask(check, Optional.of(advice), occasion));
  }

  /**
   * Whether the person should choose how to go on before anything more is asked. Only at the gate,
   * not on a call.
   */
  private boolean isStuck(Occasion occasion) {
    return occasion.kind() == Occasion.Kind.WORTH
        && !present.isCall()
        && present.state().work().intent().isEmpty()
        && new Headway(present).isLost();
  }

  private Occasion.Kind occasion(String check, boolean cured) {
    if (present.state().work().askedFor().equals(Optional.of(check))) {
      return Occasion.Kind.ASKED_FOR;
    }
    return cured ? Occasion.Kind.BEHIND : Occasion.Kind.WORTH;
  }

  /**
   * What can be chosen from, without regard to work that was begun or a check that was asked for.
   */
  public Advice choice() {
    return advise(checks(true), repairs(), present.state().work().cured());
  }

  /** Repairs that this person may do and has neither done nor declined. */
  Set<String> repairs() {
    return present.base().repairs().keySet().stream()
        .filter(id -> !present.unavailable().contains(id))
        .filter(id -> !present.state().work().declined().containsKey(id) && !isDone(id))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private Advice advise(Set<String> checks, Set<String> repairs, boolean cured) {
    return adviser.advise(
        present.belief(),
        new Planner.Options(
            checks, repairs, present.state().work().setUps(), cured, present.isCall()));
  }

  /**
   * The advice, with the check or repair first for which a set-up was just entered or left.
   * Choosing another one half way would send a person to and fro.
   */
  private Advice committed(Advice advice, Set<String> repairs) {
    String intent = present.state().work().intent().orElse("");
    if (repairs.contains(intent)) {
      return advice.repairing(intent);
    }
    return checks(true).contains(intent) ? advice.asking(intent) : advice;
  }

  private boolean isDone(String repair) {
    return present.state().work().repairs().contains(repair);
  }

  private Set<String> putOff() {
    Set<String> putOff = checks(true);
    putOff.removeAll(checks(false));
    return putOff;
  }

  /**
   * Ids of the checks that can still be made.
   *
   * @param alsoPutOff whether to include checks that were put off once
   */
  public Set<String> checks(boolean alsoPutOff) {
    return present
        .base()
        .ordinaryChecks()
        .filter(c -> !c.danger() && !present.unavailable().contains(c.id()))
        .filter(c -> isAskable(c, alsoPutOff))
        .map(Check::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private boolean isAskable(Check check, boolean alsoPutOff) {
    Optional<CaseState.Answered> last = present.state().latest(check.id());
    return last.isEmpty()
        || last.get().yieldsTo(present.role())
        || last.get()
            .answer()
            .map(
                c -> mayBeOtherwise(check, last.get()),
                r -> mayBeOtherwise(check, last.get()),
                () -> false,
                () -> alsoPutOff);
  }

  /** Whether a repair after this answer could have changed the result of the check. */
  private boolean mayBeOtherwise(Check check, CaseState.Answered last) {
    return last.epoch() < present.state().work().epoch()
        && present.state().work().deeds().stream()
            .filter(d -> d.number() > last.event())
            .map(Entry::event)
            .filter(Event.Repaired.class::isInstance)
            .map(e -> present.base().repairs().get(((Event.Repaired) e).repair()))
            .map(Repair::removes)
            .anyMatch(r -> r.keySet().stream().anyMatch(check.likelihood()::containsKey));
  }
}
