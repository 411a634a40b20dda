package yett.interview.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.moment.Present;
import yett.interview.search.CallPolicy;
import yett.interview.setup.SetUpSteps;
import yett.interview.state.CaseState;
import yett.interview.step.HandOverReason;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.plan.Planner;

/**
 * Chooses the proofs that a running gate still needs, and the closing after them.
 *
 * @param proofs all proofs that such a gate needs
 */
public record Proofs(
    Present present, List<Check> proofs, Planner planner, SetUpSteps steps, CallPolicy calls) {
  /** Whoever watches a run relies on the stop button, so it is proved before other runs. */
  public static final String STOP_BUTTON = "stop-button-works";

  /** What a new gate is run for before all else. */
  public static final Set<String> FIRST_RUN = Set.of(STOP_BUTTON, "opens-which-way");

  /** The next proof, what to do about a failed one, or the end of the case. */
  public Step step() {
    List<Check> open = new ArrayList<>();
    List<Check> due = new ArrayList<>();
    List<Check> putOff = new ArrayList<>();
    long danger = lastDanger(present.base(), present.state());
    for (Check proof : proofs) {
      Optional<Answer> answer = present.answerAfter(danger, proof.id());
      if (answer.filter(a -> a.is(Check.FAIL)).isPresent()) {
        return new Step.DecideFailedProof(proof);
      }
      if (answer.filter(a -> a.is(Check.PASS)).isEmpty()) {
        if (answer.isEmpty() && !present.isHopeless(proof.id()) && present.isOpenTo(proof)) {
          due.add(proof);
        } else if (answer.filter(Answer::putOff).isPresent() && present.isOpenTo(proof)) {
          putOff.add(proof);
        } else {
          open.add(proof);
        }
      }
    }
    List<Check> next = due.isEmpty() ? putOff : due;
    return next.isEmpty()
        ? ending(open)
        : steps.ask(nearest(next), Optional.empty(), Occasion.of(Occasion.Kind.PROOF));
  }

  /**
   * Number of the last answer that reported a danger, even if it is over; 0 if there is none. What
   * passed before it is proved again.
   */
  public static long lastDanger(RuleBase base, CaseState state) {
    return Stream.concat(state.answers().stream(), state.before().stream())
        .filter(a -> isDanger(base.checks().get(a.check()), a.answer()))
        .mapToLong(CaseState.Answered::event)
        .max()
        .orElse(0);
  }

  private static boolean isDanger(Check check, Answer answer) {
    return check != null
        && check.danger()
        && answer.choice().filter(outcome -> check.indexOf(outcome) > 0).isPresent();
  }

  private Step ending(List<Check> open) {
    List<Stop> stops =
        present.judgement().stops().stream()
            .map(s -> present.base().stops().get(s.stop()))
            .distinct()
            .toList();
    if (open.isEmpty() && !stops.isEmpty()) { // no proof showed that the danger is over
      return steps.leftOutOfUse(
          new Step.HandOver(Ending.OUT_OF_SERVICE, new HandOverReason.Stopped(stops)));
    }
    List<Repair> unset =
        present.isCall() ? List.of() : Settings.due(present.judgement(), present.base());
    if (open.isEmpty() && !unset.isEmpty()) { // a leaf with a force nobody set may hurt
      return steps.leftOutOfUse(
          new Step.HandOver(Ending.OUT_OF_SERVICE, new HandOverReason.Unset(unset)));
    }
    if (open.isEmpty()) {
      return steps.backInUse(Ending.proved(present.repairs()));
    }
    if (calls.isSolved(open)) {
      return steps.closing(new Step.CloseSolved(calls.watch()));
    }
    // Who may make none of the proofs leaves them to somebody who may. Who could not make one
    // leaves an unproved gate. A caller locks nothing off: somebody is sent.
    boolean reserved = open.stream().noneMatch(present::isOpenTo);
    return steps.leftOutOfUse(
        new Step.HandOver(
            reserved || present.isCall() ? Ending.HANDED_OVER : Ending.OUT_OF_SERVICE,
            new HandOverReason.Unproved(open)));
  }

  /**
   * The proof with the least change of set-ups. Proofs in which the gate cannot run come first, so
   * that the last one shows a running gate. Of the runs the stop button comes first, and an
   * undisturbed one before anything is put in the leaf's way.
   */
  private Check nearest(List<Check> checks) {
    return checks.stream()
        .min(
            Comparator.comparing(this::isOfGateThatCanRun)
                .thenComparing(c -> !c.id().equals(STOP_BUTTON))
                .thenComparing(c -> !c.needs().contains(SetUp.ABLE_TO_RUN))
                .thenComparingDouble(
                    c -> planner.changeOfSetUp(present.state().work().setUps(), c.needs())))
        .orElseThrow();
  }

  private boolean isOfGateThatCanRun(Check proof) {
    return planner.change(Set.copyOf(proof.needs()), List.of(SetUp.GATE_RUNNING)).leave().isEmpty();
  }
}
