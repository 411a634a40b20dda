package yett.interview.watch;

import static yett.interview.watch.SafetyWatch.require;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.rules.Conclusion.StopNow;
import yett.rules.Judgement;

/**
 * Checks each step against the set-ups in force, whoever is there and whatever comes next. ({@link
 * StepWatch} checks the step and its person.) It knows the set-ups only from their cards.
 */
record StateWatch(RuleBase base, Judgement judgement, PlainReading plain, Role role) {
  /**
   * Checks a step.
   *
   * @throws UnsafeStep for the first condition that it breaks
   */
  void look(Step step) {
    for (String setUp : plain.inForce) { // no power may return while the leaf is released
      for (String outer : base.setUps().get(setUp).within()) {
        require(plain.inForce.contains(outer), "%s without %s", setUp, outer);
      }
    }
    if (step instanceof Step.Leave l && !l.setUp().id().equals(SetUp.OUT_OF_USE)) {
      require(!plain.unseen.contains(l.setUp().id()), "%s is left and nobody saw to it", l.setUp());
    }
    for (String card : step.cards()) {
      require(
          !judgement.unavailable().contains(card), "%s comes up though a rule excludes it", card);
    }
    if (makesRun(step)) {
      run();
      covered(step);
    }
    if (isWork(step)) {
      require(plain.unseen.isEmpty(), "work goes on in %s, and nobody saw to it", plain.unseen);
      checkSafeState();
    }
    if (step instanceof Step.Retest || isBackInUse(step)) {
      checkFailedProof();
    }
    if (isBackInUse(step)) {
      List<StopNow> dangers = judgement.stops().stream().filter(this::forbidsUse).toList();
      require(dangers.isEmpty(), "back in use with a danger: %s", dangers);
      require(
          !judgement.forbidden().contains(SetUp.GATE_RUNNING),
          "back in use though a known fault or a danger forbids that it runs");
    }
  }

  /**
   * Whether a stop forbids use of the gate. One for somebody who is shut in and unhurt does not:
   * they can leave by a gate that runs.
   */
  private boolean forbidsUse(StopNow stop) {
    Stop card = base.stops().get(stop.stop());
    return card.leaves().isPresent() || card.goesOn().isEmpty();
  }

  private static boolean makesRun(Step step) {
    List<String> needs = step.needs();
    return step instanceof Step.Retest
        || needs.contains(SetUp.GATE_RUNNING)
        || needs.contains(SetUp.ABLE_TO_RUN);
  }

  private void run() {
    SetUp running = base.setUps().get(SetUp.GATE_RUNNING);
    boolean watched = plain.inForce.contains(SetUp.GATE_RUNNING);
    Set<String> forbidden = judgement.forbidden();
    require(
        !forbidden.contains(SetUp.GATE_RUNNING)
            && (watched || !forbidden.contains(SetUp.ABLE_TO_RUN)),
        "the gate runs though a known fault or a danger forbids it");
    if (running != null) {
      require(!role.may(running.who()) || watched, "the gate runs and nobody is at its stop");
      plain.inForce.forEach(
          s -> require(!running.excludes().contains(s), "the gate is to run in %s", s));
    }
  }

  /** Checks that the gate runs with its covers on, unless the work is in the open operator. */
  private void covered(Step step) {
    SetUp covers = base.setUps().get(SetUp.COVERS_ON);
    if (covers != null) {
      plain.inForce.stream()
          .filter(covers.excludes()::contains)
          .forEach(
              s -> require(step.needs().contains(s), "the gate is to run in %s for no reason", s));
    }
  }

  private static boolean isWork(Step step) {
    return !step.cards().isEmpty() || step instanceof Step.Retest;
  }

  /**
   * Checks that nobody works before the gate is in the safe state that the danger demands, as far
   * as they may bring it about.
   */
  private void checkSafeState() {
    for (StopNow stop : judgement.stops()) {
      Optional<SetUp> safe = base.stops().get(stop.stop()).leaves().map(base.setUps()::get);
      safe.filter(s -> role.may(s.who()))
          .ifPresent(
              s ->
                  require(
                      plain.inForce.contains(s.id()),
                      "%s stands, and not %s",
                      stop.stop(),
                      s.id()));
    }
  }

  private static boolean isBackInUse(Step step) {
    return step instanceof Step.CloseRepaired || step instanceof Step.CloseSolved;
  }

  /**
   * Checks that a failed proof is followed by a repair and made again, and that nobody tries the
   * gate before.
   */
  private void checkFailedProof() {
    for (Check proof : base.proofs()) {
      plain
          .now(proof.id())
          .ifPresent(
              told ->
                  require(
                      !told.answer().is(Check.FAIL),
                      "%s failed, and the gate is run before anything was mended",
                      proof.id()));
    }
  }
}
