package yett.interview.course;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import yett.interview.course.Concluding.Concluded;
import yett.interview.course.Concluding.Mark;
import yett.interview.course.Representatives.Heeded;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/**
 * What a person may answer to a step, one of each kind that makes a difference to safety; each a
 * list of events that are written down together.
 */
final class Answers implements Step.Visitor<List<List<Event>>> {
  private final Representatives few;
  private final RuleBase base;
  private final CaseState state;
  private final Concluded concluded;
  private final int atOnce;

  /**
   * @param atOnce so many dangers and faults may stand together
   */
  Answers(Representatives few, CaseState state, Concluded concluded, int atOnce) {
    this.few = few;
    this.base = few.base();
    this.state = state;
    this.concluded = concluded;
    this.atOnce = atOnce;
  }

  private boolean mayMore() {
    return concluded.live().size() < atOnce;
  }

  private Optional<Mark> live(String check) {
    return concluded.live().stream().filter(m -> m.card().equals(check)).findFirst();
  }

  /** All at once, as they are asked: none, one that stands stays, or one is new. */
  @Override
  public List<List<Event>> askDangers(Step.AskDangers step) {
    List<List<Event>> answers = new ArrayList<>();
    answers.add(step.dangers().stream().map(Answers::harmless).toList());
    for (Check check : step.dangers()) {
      Stream<Answer> bad =
          live(check.id()).isPresent()
              ? Stream.of(live(check.id()).get().answer())
              : few.heeded(check.id()).filter(h -> mayMore()).map(Heeded::answer);
      bad.forEach(
          answer ->
              answers.add(
                  step.dangers().stream()
                      .map(c -> c == check ? answered(c, answer) : harmless(c))
                      .toList()));
    }
    if (concluded.live().isEmpty() && atOnce > 1) {
      answers.addAll(pairs(step.dangers()));
    }
    return answers;
  }

  /** Two at once, one pair of each two kinds. */
  private List<List<Event>> pairs(List<Check> dangers) {
    List<List<Event>> pairs = new ArrayList<>();
    Set<Object> kinds = new HashSet<>();
    List<Heeded> all = dangers.stream().flatMap(c -> few.heeded(c.id())).toList();
    for (Heeded one : all) {
      for (Heeded other : all) {
        if (!one.check().equals(other.check())
            && kinds.add(new HashSet<>(List.of(one.kind(), other.kind())))) {
          pairs.add(
              dangers.stream()
                  .map(
                      c ->
                          c.id().equals(one.check())
                              ? answered(c, one.answer())
                              : c.id().equals(other.check())
                                  ? answered(c, other.answer())
                                  : harmless(c))
                  .toList());
        }
      }
    }
    return pairs;
  }

  private static Event harmless(Check check) {
    return answered(check, new Answer.Chosen(check.outcomes().get(0).id()));
  }

  @Override
  public List<List<Event>> askSite(Step.AskSite step) {
    List<Event> site = new ArrayList<>();
    few.site().forEach((question, answer) -> site.add(new Event.SiteAnswered(question, answer)));
    site.add(new Event.SiteTaken());
    return List.of(site);
  }

  @Override
  public List<List<Event>> askComplaints(Step.AskComplaints step) {
    return few.complaints().stream()
        .map(c -> one(new Event.Complained(List.of(c))))
        .limit(state.role() == yett.knowledge.Role.CALLER ? 100 : 1)
        .toList();
  }

  @Override
  public List<List<Event>> askPressing(Step.AskPressing step) {
    return List.of(one(new Event.Pressed(List.of())));
  }

  @Override
  public List<List<Event>> askHistory(Step.AskHistory step) {
    return List.of(one(new Event.Happened(List.of())));
  }

  @Override
  public List<List<Event>> ask(Step.Ask step) {
    Check check = step.check();
    List<List<Event>> answers = new ArrayList<>();
    if (check.kind() == Check.Kind.PROOF) {
      answers.add(one(answered(check, new Answer.Chosen(Check.PASS))));
      if (few.failing() && noOther(check, a -> a.is(Check.FAIL) || a.hopeless())) {
        answers.add(one(answered(check, new Answer.Chosen(Check.FAIL))));
      }
      if (noOther(check, a -> a.is(Check.FAIL) || a.hopeless())) {
        answers.add(one(answered(check, new Answer.CannotTell())));
      }
      return answers;
    }
    if (step.occasion().kind() == Occasion.Kind.AFTER_REPAIR) {
      answers.add(one(harmless(check)));
      answers.add(one(answered(check, new Answer.CannotTell())));
    } else {
      answers.add(one(new Event.Answered(few.doubleOf(check.id()), new Answer.CannotTell())));
    }
    if (live(check.id()).isPresent()) {
      answers.add(one(ordinary(check)));
    } else if (mayMore()) {
      few.heeded(check.id()).forEach(h -> answers.add(one(answered(check, h.answer()))));
    }
    return answers;
  }

  private static Event ordinary(Check check) {
    return check.measures().isEmpty()
        ? harmless(check)
        : answered(check, new Answer.Read(check.measures().get().show(usual(check)), usual(check)));
  }

  private static double usual(Check check) {
    double least = check.measures().get().least();
    return Double.isFinite(least) ? least : 0;
  }

  /** One proof that is not made stands for several: the gate is proved when the last one is. */
  private boolean noOther(Check proof, Predicate<Answer> said) {
    return base.proofs().stream()
        .filter(p -> !p.id().equals(proof.id()))
        .map(p -> state.latest(p.id()))
        .flatMap(Optional::stream)
        .noneMatch(a -> said.test(a.answer()));
  }

  private static List<Event> one(Event event) {
    return List.of(event);
  }

  /** One look at a time stands for the round: of the others nothing is said. */
  @Override
  public List<List<Event>> lookRound(Step.LookRound step) {
    return step.looks().stream().flatMap(l -> ask(l).stream()).toList();
  }

  private static Event answered(Check check, Answer answer) {
    return new Event.Answered(check.id(), answer);
  }

  @Override
  public List<List<Event>> enter(Step.Enter step) {
    return List.of(one(step.done()));
  }

  @Override
  public List<List<Event>> leave(Step.Leave step) {
    return List.of(one(step.done()));
  }

  @Override
  public List<List<Event>> mend(Step.Mend step) {
    Repair repair = step.repair();
    Occasion.Kind kind = step.occasion().kind();
    boolean led = kind == Occasion.Kind.AFTER_REPAIR || kind == Occasion.Kind.FAILED_PROOF;
    boolean ends = few.ends(repair.id()) && !concluded.live().isEmpty();
    List<List<Event>> answers = new ArrayList<>();
    if (led || ends) {
      answers.add(one(new Event.Repaired(repair.id(), true)));
      answers.add(one(new Event.Repaired(repair.id(), false)));
      return answers;
    }
    answers.add(one(new Event.Repaired(few.doubleOf(repair.id()), true)));
    answers.add(one(new Event.Repaired(few.doubleOf(repair.id()), false)));
    if (concluded.judgement().followUps().isEmpty()) {
      few.doublesBefore(repair.id()).forEach(id -> answers.add(one(new Event.Repaired(id, true))));
    }
    return answers;
  }

  @Override
  public List<List<Event>> retest(Step.Retest step) {
    return List.of(
        one(new Event.Retested(true)), one(new Event.Retested(false, Optional.of(true))));
  }

  @Override
  public List<List<Event>> settle(Step.Settle step) {
    return List.of(
        one(new Event.Kept(step.contradiction().first(), step.contradiction().second())));
  }

  @Override
  public List<List<Event>> takeStock(Step.TakeStock step) {
    List<List<Event>> all = new ArrayList<>();
    all.add(one(new Event.WentOn()));
    all.add(one(new Event.GaveUp("the last checks changed no suspicion")));
    step.suspects().stream()
        .flatMap(s -> s.repair().stream())
        .map(r -> one(new Event.AskedFor(r.id())))
        .forEach(all::add);
    return all;
  }

  @Override
  public List<List<Event>> decideFailedProof(Step.DecideFailedProof step) {
    return List.of(
        one(new Event.Reopened(step.proof().id())), one(new Event.GaveUp("a proof failed")));
  }

  @Override
  public List<List<Event>> makeSafe(Step.MakeSafe step) {
    return List.of(one(step.done()));
  }

  @Override
  public List<List<Event>> handOver(Step.HandOver step) {
    return List.of(one(new Event.Closed(step.ending())));
  }

  @Override
  public List<List<Event>> closeSolved(Step.CloseSolved step) {
    return List.of(one(new Event.Closed(Ending.SOLVED)));
  }

  @Override
  public List<List<Event>> closeRepaired(Step.CloseRepaired step) {
    return List.of(one(new Event.Closed(step.ending())));
  }

  @Override
  public List<List<Event>> finished(Step.Finished step) {
    return List.of();
  }
}
