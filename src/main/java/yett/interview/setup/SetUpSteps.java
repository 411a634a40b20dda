package yett.interview.setup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.interview.event.Ending;
import yett.interview.moment.Present;
import yett.interview.state.CaseState;
import yett.interview.step.Occasion;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Advice;
import yett.plan.Planner;

/** Makes the steps that enter and leave set-ups, one at a time, before the work that needs them. */
public final class SetUpSteps {
  private final Present present;
  private final RuleBase base;
  private final Planner planner;

  /** The set-up steps from the set-ups that are in force now. */
  public SetUpSteps(Present present, Planner planner) {
    this.present = present;
    this.base = present.base();
    this.planner = planner;
  }

  /** The check, or the step into the next set-up that it needs. */
  public Step ask(Check check, Optional<Advice> advice, Occasion occasion) {
    return ask(check, check.needs(), advice, occasion);
  }

  /** Asks a check in more set-ups than its own card needs. */
  public Step ask(Check check, List<String> needs, Optional<Advice> advice, Occasion occasion) {
    return ready(
        needs(needs),
        new Purpose(Purpose.Kind.CHECK, check.id()),
        question(check, advice, occasion));
  }

  /** A check as a step, without the set-ups that come before it. */
  public Step.Ask question(Check check, Optional<Advice> advice, Occasion occasion) {
    return new Step.Ask(
        check,
        present.cautions(check.hazards()),
        present.judgement().expectation(check.id()),
        advice,
        occasion);
  }

  /**
   * A round of looks, or the set-up to enter for it; the purpose of the set-up is the first look.
   */
  public Step look(Place place, List<Step.Ask> looks, List<String> needs) {
    List<String> all = List.copyOf(needs(needs));
    List<String> hazards =
        looks.stream().flatMap(l -> l.check().hazards().stream()).distinct().toList();
    return ready(
        all,
        new Purpose(Purpose.Kind.CHECK, looks.get(0).check().id()),
        new Step.LookRound(place, looks, all, present.cautions(hazards)));
  }

  /** Whether further needs are met without a change once the first are in force. */
  public boolean fits(Collection<String> needs, List<String> more) {
    Set<String> first = new LinkedHashSet<>(needs(List.copyOf(needs)));
    Set<String> both = new LinkedHashSet<>(first);
    both.addAll(needs(more));
    Set<String> inForce = present.state().work().setUps();
    return planner.change(inForce, both).equals(planner.change(inForce, first))
        && both.stream()
            .noneMatch(s -> base.setUps().get(s).excludes().stream().anyMatch(both::contains));
  }

  /** The repair, or the step into the next set-up that it needs. */
  public Step mend(Repair repair, Optional<Advice> plan, Occasion occasion) {
    return ready(
        needs(repair.needs()),
        new Purpose(Purpose.Kind.REPAIR, repair.id()),
        new Step.Mend(repair, present.cautions(repair.hazards()), plan, occasion));
  }

  /** Tries the gate under watch, its covers on: what was open for a check is closed first. */
  public Step retest() {
    List<String> needs = new ArrayList<>(running());
    if (base.setUps().containsKey(SetUp.COVERS_ON)) {
      needs.add(SetUp.COVERS_ON);
    }
    return ready(needs, Purpose.of(Purpose.Kind.TRIAL), new Step.Retest());
  }

  /** Leaves an unproved gate locked and barred, if this person may lock it; then the given step. */
  public Step leftOutOfUse(Step then) {
    SetUp outOfUse = base.setUps().get(SetUp.OUT_OF_USE);
    return outOfUse != null && present.role().may(outOfUse.who())
        ? ready(List.of(outOfUse.id()), Purpose.of(Purpose.Kind.CLOSING), then)
        : closing(then);
  }

  /**
   * Leaves every set-up in order before a case closes, as far as this person may. The leaf is
   * stopped first, a set-up within another is left before it, and barriers go last.
   */
  public Step closing(Step then) {
    Purpose purpose = Purpose.of(Purpose.Kind.CLOSING);
    return unseen(purpose).orElseGet(() -> left(then, purpose));
  }

  private Step left(Step then, Purpose purpose) {
    return base.setUps().values().stream()
        .filter(s -> present.state().work().setUps().contains(s.id()))
        .filter(s -> present.role().may(s.who()))
        .min(
            Comparator.comparing((SetUp s) -> !s.id().equals(SetUp.GATE_RUNNING))
                .thenComparing(s -> -base.withOuter(List.of(s.id())).size()))
        .<Step>map(s -> new Step.Leave(s, purpose))
        .orElse(then);
  }

  /** Gives back a gate that passed every proof, once no set-up is in force. */
  public Step backInUse(Ending ending) {
    SetUp inUse = base.setUps().get(SetUp.IN_USE);
    return closing(new Step.CloseRepaired(ending, inUse == null ? List.of() : inUse.enter()));
  }

  /**
   * The needs, with a run replaced by a run under watch for those who may do that: they never run
   * the gate unwatched.
   */
  public Collection<String> needs(List<String> needs) {
    Set<String> all = new LinkedHashSet<>(needs);
    if (needs.contains(SetUp.ABLE_TO_RUN)) {
      all.addAll(running());
    }
    return all;
  }

  /** The set-ups in which this person tries the gate. */
  private List<String> running() {
    SetUp running = base.setUps().get(SetUp.GATE_RUNNING);
    return running != null && present.role().may(running.who()) ? List.of(running.id()) : List.of();
  }

  private Step ready(Collection<String> needs, Purpose purpose, Step then) {
    boolean left = present.state().work().setUps().contains(SetUp.OUT_OF_USE);
    if (left && !needs.contains(SetUp.OUT_OF_USE)) { // leaving checks that locks and bars held
      return new Step.Leave(base.setUps().get(SetUp.OUT_OF_USE), purpose);
    }
    Optional<Step> unseen = unseen(purpose);
    if (unseen.isPresent()) {
      return unseen.get();
    }
    if (present.isForbidden(SetUp.GATE_RUNNING) // what forbids it came to light while it ran
        && present.state().work().setUps().contains(SetUp.GATE_RUNNING)) {
      return new Step.Leave(base.setUps().get(SetUp.GATE_RUNNING), purpose);
    }
    Planner.Change change = planner.change(present.state().work().setUps(), needs);
    Optional<SetUp> first = change.enter().stream().findFirst().map(base.setUps()::get);
    List<String> stays =
        change.leave().stream()
            .filter(
                s -> first.filter(f -> KeptOff.between(base.setUps().get(s), f, base)).isPresent())
            .toList();
    Optional<String> undone = change.leave().stream().filter(s -> !stays.contains(s)).findFirst();
    if (undone.isPresent()) {
      return new Step.Leave(base.setUps().get(undone.get()), purpose);
    }
    return first.map(s -> enter(s, purpose, false, stays)).orElse(then);
  }

  /**
   * The step that enters a set-up.
   *
   * @param stays set-ups that this one replaces without their being left, so that power is not
   *     restored only to be cut again
   */
  private Step enter(SetUp setUp, Purpose purpose, boolean again, List<String> stays) {
    return new Step.Enter(setUp, present.cautions(setUp.hazards()), purpose, again, stays);
  }

  /**
   * The step that confirms a set-up again. Whoever comes to a case takes no set-up on trust: each
   * is confirmed again from the outside in, and dead is proved again. A gate that stays out of use
   * is not opened for that.
   */
  private Optional<Step> unseen(Purpose purpose) {
    CaseState.Work work = present.state().work();
    boolean left = work.setUps().contains(SetUp.OUT_OF_USE);
    return base.setUps().values().stream()
        .filter(s -> work.unseen().contains(s.id()) && present.role().may(s.who()))
        .filter(s -> !left || s.id().equals(SetUp.OUT_OF_USE))
        .min(
            Comparator.comparingInt((SetUp s) -> base.withOuter(List.of(s.id())).size())
                .thenComparing(s -> !present.isLeftByStop(s)))
        .map(s -> enter(s, purpose, true, List.of()));
  }
}
