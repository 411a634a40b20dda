package yett.interview.search;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.interview.moment.Present;
import yett.interview.setup.SetUpSteps;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.SetUp;
import yett.plan.Planner;
import yett.rules.Conclusion.FollowUp;

/** Chooses follow-up work: what a completed repair, or a recent event, makes necessary. */
public record FollowUps(Present present, Planner planner, SetUpSteps steps) {
  private static final Occasion BEFORE_RUN = Occasion.of(Occasion.Kind.BEFORE_RUN);

  /**
   * Follow-up work that is due, in the order of each repair's card; work added by a rule comes
   * last.
   */
  private Stream<FollowUp> due() {
    return present.judgement().followUps().stream()
        .filter(this::isAfterRepair)
        .sorted(Comparator.comparing(FollowUp::repair).thenComparingInt(this::place));
  }

  private boolean isAfterRepair(FollowUp due) {
    return present.base().repairs().containsKey(due.repair());
  }

  /**
   * Work that a recent event makes necessary before anything runs the gate: looks first, then the
   * repair that stands for those that nobody can tell.
   *
   * @param looks chooses the looks that are made together at one place
   */
  public Optional<Step> beforeAnyRun(LookRounds looks, Set<String> open) {
    return Stream.concat(
            afterEvents().flatMap(f -> look(f, looks, open).stream()),
            afterEvents()
                .filter(f -> present.base().repairs().containsKey(f.card()))
                .flatMap(f -> step(f, false, BEFORE_RUN).stream()))
        .findFirst();
  }

  /** A look of those that was put off once. */
  public Optional<Step> putOffBeforeRun() {
    return afterEvents().flatMap(f -> step(f, true, BEFORE_RUN).stream()).findFirst();
  }

  private Stream<FollowUp> afterEvents() {
    return present.judgement().followUps().stream().filter(f -> !isAfterRepair(f));
  }

  private Optional<Step> look(FollowUp followUp, LookRounds looks, Set<String> open) {
    Check check = present.base().checks().get(followUp.card());
    return check == null
        ? Optional.empty()
        : step(followUp, false, BEFORE_RUN)
            .map(alone -> looks.around(check, open, Optional.empty(), BEFORE_RUN).orElse(alone));
  }

  private int place(FollowUp due) {
    int place = present.base().repairs().get(due.repair()).entails().indexOf(due.card());
    return place < 0 ? Integer.MAX_VALUE : place;
  }

  /** The follow-up work with the least change of set-ups; empty if none is due. */
  public Optional<Step> first() {
    return first(due(), false);
  }

  /** Work that the set-ups in force allow. It is done before they are left for the retest. */
  public Optional<Step> whileHere() {
    return first(due().filter(f -> isAtHand(needs(f.card()))), false);
  }

  /** Measurements with the power back and the gate standing. They come before the gate is run. */
  public Optional<Step> beforeRun() {
    return first(due().filter(f -> isStanding(f.card())), false);
  }

  /**
   * Adjustments on the running gate that come before the retest. A leaf whose limits moved would
   * not stop where it should, and the retest would show only that.
   */
  public Optional<Step> setBeforeRun() {
    return first(due().filter(f -> isSetRunning(f.card())), false);
  }

  private boolean isSetRunning(String card) {
    Repair repair = present.base().repairs().get(card);
    return repair != null && repair.needs().contains(SetUp.GATE_RUNNING);
  }

  private boolean isStanding(String card) {
    Check check = present.base().checks().get(card);
    return check != null
        && check.needs().contains(SetUp.COVER_OFF)
        && !check.needs().contains(SetUp.GATE_RUNNING)
        && !check.needs().contains(SetUp.ABLE_TO_RUN);
  }

  /** A follow-up check that was put off once. */
  public Optional<Step> putOff() {
    return first(due(), true);
  }

  /** Of the work that is due, the one with the least change of set-ups. */
  private Optional<Step> first(Stream<FollowUp> due, boolean alsoPutOff) {
    Map<FollowUp, Step> open = new LinkedHashMap<>();
    due.forEach(f -> step(f, alsoPutOff).ifPresent(step -> open.put(f, step)));
    Set<String> setUps = present.state().work().setUps();
    return open.keySet().stream()
        .takeWhile(f -> present.base().checks().containsKey(f.card()))
        .min(Comparator.comparingDouble(f -> planner.changeOfSetUp(setUps, needs(f.card()))))
        .or(() -> open.keySet().stream().findFirst())
        .map(open::get);
  }

  private List<String> needs(String card) {
    Repair repair = present.base().repairs().get(card);
    return repair != null ? repair.needs() : present.base().checks().get(card).needs();
  }

  private boolean isAtHand(List<String> needs) {
    Set<String> setUps = present.state().work().setUps();
    Planner.Change change = planner.change(setUps, needs);
    return !setUps.contains(SetUp.GATE_RUNNING)
        && setUps.stream().anyMatch(needs::contains)
        && change.leave().isEmpty()
        && change.enter().isEmpty();
  }

  private Optional<Step> step(FollowUp followUp, boolean alsoPutOff) {
    return step(
        followUp, alsoPutOff, Occasion.after(present.base().repairs().get(followUp.repair())));
  }

  private Optional<Step> step(FollowUp followUp, boolean alsoPutOff, Occasion occasion) {
    String id = followUp.card();
    if (present.unavailable().contains(id) || present.state().work().declined().containsKey(id)) {
      return Optional.empty();
    }
    Repair repair = present.base().repairs().get(id);
    if (repair != null) {
      return Optional.of(steps.mend(repair, Optional.empty(), occasion));
    }
    boolean isHad =
        present.answer(id).filter(a -> !alsoPutOff || !a.putOff()).isPresent()
            || present.isHopeless(id);
    return isHad
        ? Optional.empty()
        : Optional.of(steps.ask(present.base().checks().get(id), Optional.empty(), occasion));
  }
}
