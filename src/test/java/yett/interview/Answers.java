package yett.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** What a person may answer to a step: one of each kind that makes a difference to safety. */
final class Answers implements Step.Visitor<List<Event>> {
  private final RuleBase base;
  private final CaseState state;

  Answers(RuleBase base, CaseState state) {
    this.base = base;
    this.state = state;
  }

  private boolean anyProof(Predicate<Answer> said) {
    return state.answers().stream()
        .filter(a -> base.checks().get(a.check()).kind() == Check.Kind.PROOF)
        .anyMatch(a -> said.test(a.answer()));
  }

  @Override
  public List<Event> askDangers(Step.AskDangers step) {
    Check first = step.dangers().get(0);
    List<Event> events = new ArrayList<>();
    events.add(answered(first, new Answer.Chosen(first.outcomes().get(0).id())));
    if (state.answers().stream().noneMatch(this::isDanger)) { // one of them stands for several
      first.outcomes().stream()
          .skip(1)
          .forEach(o -> events.add(answered(first, new Answer.Chosen(o.id()))));
      events.add(answered(first, new Answer.CannotTell()));
    }
    return events;
  }

  private boolean isDanger(CaseState.Answered given) {
    Check check = base.checks().get(given.check());
    return check.danger() && !given.answer().is(check.outcomes().get(0).id());
  }

  @Override
  public List<Event> askSite(Step.AskSite step) {
    return List.of(new Event.SiteTaken());
  }

  @Override
  public List<Event> askComplaints(Step.AskComplaints step) {
    return List.of(new Event.Complained(List.of(step.complaints().get(0).id())));
  }

  @Override
  public List<Event> askPressing(Step.AskPressing step) {
    return List.of(new Event.Pressed(List.of()));
  }

  @Override
  public List<Event> askHistory(Step.AskHistory step) {
    return List.of(new Event.Happened(List.of()));
  }

  @Override
  public List<Event> ask(Step.Ask step) {
    Check check = step.check();
    List<Event> events = new ArrayList<>();
    if (check.kind() == Check.Kind.PROOF) {
      events.add(answered(check, new Answer.Chosen(Check.PASS)));
      // One proof that failed, and one that nobody could make, stand for several.
      if (!anyProof(a -> a.is(Check.FAIL))) {
        events.add(answered(check, new Answer.Chosen(Check.FAIL)));
      }
      if (!anyProof(Answer::hopeless)) {
        events.add(answered(check, new Answer.CannotTell()));
      }
      return events;
    }
    events.add(answered(check, new Answer.CannotTell()));
    if (check.measures().isEmpty()) {
      events.add(answered(check, new Answer.Chosen(check.outcomes().get(0).id())));
    }
    return events;
  }

  /** One look at a time stands for the round: of the others nothing is said. */
  @Override
  public List<Event> lookRound(Step.LookRound step) {
    return step.looks().stream().flatMap(l -> ask(l).stream()).toList();
  }

  private static Event answered(Check check, Answer answer) {
    return new Event.Answered(check.id(), answer);
  }

  @Override
  public List<Event> enter(Step.Enter step) {
    return List.of(step.done());
  }

  @Override
  public List<Event> leave(Step.Leave step) {
    return List.of(step.done());
  }

  @Override
  public List<Event> mend(Step.Mend step) {
    String id = step.repair().id();
    return List.of(new Event.Repaired(id, true), new Event.Repaired(id, false));
  }

  @Override
  public List<Event> retest(Step.Retest step) {
    return List.of(new Event.Retested(true), new Event.Retested(false, Optional.of(true)));
  }

  @Override
  public List<Event> settle(Step.Settle step) {
    return List.of(new Event.Kept(step.contradiction().first(), step.contradiction().second()));
  }

  @Override
  public List<Event> decideFailedProof(Step.DecideFailedProof step) {
    return List.of(new Event.Reopened(step.proof().id()));
  }

  @Override
  public List<Event> makeSafe(Step.MakeSafe step) {
    return List.of(step.done());
  }

  @Override
  public List<Event> handOver(Step.HandOver step) {
    return List.of(new Event.Closed(step.ending()));
  }

  @Override
  public List<Event> closeSolved(Step.CloseSolved step) {
    return List.of(new Event.Closed(Ending.SOLVED));
  }

  @Override
  public List<Event> closeRepaired(Step.CloseRepaired step) {
    return List.of(new Event.Closed(Ending.REPAIRED));
  }

  @Override
  public List<Event> finished(Step.Finished step) {
    return List.of();
  }
}
