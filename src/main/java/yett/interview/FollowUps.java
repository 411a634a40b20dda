package yett.interview;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.SetUp;
import yett.plan.Planner;
import yett.rules.Conclusion.FollowUp;

/** Work that a repair entails. */
record FollowUps(Present present, Planner planner, SetUpSteps steps) {
  /** In the order in which each repair's card names them; what a rule adds comes after. */
  private Stream<FollowUp> due() {
    return present.judgement.followUps().stream()
        .sorted(Comparator.comparing(FollowUp::repair).thenComparingInt(this::place));
  }

  private int place(FollowUp due) {
    int place = present.base.repairs().get(due.repair()).entails().indexOf(due.card());
    return place < 0 ? Integer.MAX_VALUE : place;
  }

  Optional<Step> first() {
    return first(due(), false);
  }

  /** What the set-ups in force allow is done before they are left for the retest. */
  Optional<Step> whileHere() {
    return first(due().filter(f -> isAtHand(needs(f.card()))), false);
  }

  /** What is measured with the power back and the gate standing comes before it is run. */
  Optional<Step> beforeRun() {
    return first(due().filter(f -> isStanding(f.card())), false);
  }

  /**
   * What is set on the running gate comes before it is tried: a leaf whose limits moved would not
   * stop where it should, and the try would tell of nothing else.
   */
  Optional<Step> setBeforeRun() {
    return first(due().filter(f -> isSetRunning(f.card())), false);
  }

  private boolean isSetRunning(String card) {
    Repair repair = present.base.repairs().get(card);
    return repair != null && repair.needs().contains(SetUp.GATE_RUNNING);
  }

  private boolean isStanding(String card) {
    Check check = present.base.checks().get(card);
    return check != null
        && check.needs().contains(SetUp.COVER_OFF)
        && !check.needs().contains(SetUp.GATE_RUNNING)
        && !check.needs().contains(SetUp.ABLE_TO_RUN);
  }

  /** A check among it that was put off once. */
  Optional<Step> putOff() {
    return first(due(), true);
  }

  /** Of checks that come next the one for which the state of the work changes least. */
  private Optional<Step> first(Stream<FollowUp> due, boolean alsoPutOff) {
    Map<FollowUp, Step> open = new LinkedHashMap<>();
    due.forEach(f -> step(f, alsoPutOff).ifPresent(step -> open.put(f, step)));
    Set<String> setUps = present.state.work().setUps();
    return open.keySet().stream()
        .takeWhile(f -> present.base.checks().containsKey(f.card()))
        .min(Comparator.comparingDouble(f -> planner.changeOfSetUp(setUps, needs(f.card()))))
        .or(() -> open.keySet().stream().findFirst())
        .map(open::get);
  }

  private List<String> needs(String card) {
    Repair repair = present.base.repairs().get(card);
    return repair != null ? repair.needs() : present.base.checks().get(card).needs();
  }

  private boolean isAtHand(List<String> needs) {
    Set<String> setUps = present.state.work().setUps();
    Planner.Change change = planner.change(setUps, needs);
    return !setUps.contains(SetUp.GATE_RUNNING)
        && setUps.stream().anyMatch(needs::contains)
        && change.leave().isEmpty()
        && change.enter().isEmpty();
  }

  private Optional<Step> step(FollowUp followUp, boolean alsoPutOff) {
    String id = followUp.card();
    if (present.unavailable.contains(id) || present.state.work().declined().containsKey(id)) {
      return Optional.empty();
    }
    Occasion occasion = Occasion.after(present.base.repairs().get(followUp.repair()));
    Repair repair = present.base.repairs().get(id);
    if (repair != null) {
      return Optional.of(steps.mend(repair, Optional.empty(), occasion));
    }
    boolean isHad =
        present.answer(id).filter(a -> !alsoPutOff || !a.putOff()).isPresent()
            || present.isHopeless(id);
    return isHad
        ? Optional.empty()
        : Optional.of(steps.ask(present.base.checks().get(id), Optional.empty(), occasion));
  }
}
