package yett.interview.course;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.interview.watch.SafetyWatch;
import yett.interview.watch.UnsafeStep;
import yett.interview.watch.Watches;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.StopNow;
import yett.rules.Judgement;

/**
 * What must hold in every state of the work: all that {@link SafetyWatch} says of a step in every
 * replay, by the cards; and what {@link Gate} says a second time, by what a set-up physically does.
 */
final class Invariants {
  private final List<Entry> entries;
  private final RuleBase base;
  private final CaseState state;
  private final Judgement judgement;
  private final Watches watches;
  private final Gate gate;

  Invariants(RuleBase base, List<Entry> entries, CaseState state, Judgement judgement) {
    this.base = base;
    this.state = state;
    this.judgement = judgement;
    this.entries = entries;
    this.watches = new Watches(base, entries);
    this.gate = Gate.after(entries);
  }

  /** The first that a step breaks. */
  Optional<String> of(Step step) {
    Optional<String> physical =
        power(step)
            .or(() -> run(step))
            .or(() -> danger(step))
            .or(() -> suspicion(step))
            .or(() -> scene(step))
            .or(() -> ending(step));
    if (physical.isPresent()) {
      return physical;
    }
    try {
      watches.state(judgement, state.role(), step);
      watches.step(state.role(), step);
      return Optional.empty();
    } catch (UnsafeStep unsafe) {
      return Optional.of(unsafe.getMessage());
    }
  }

  private Optional<String> scene(Step step) {
    boolean work =
        step instanceof Step.Ask
            || step instanceof Step.LookRound
            || step instanceof Step.Mend
            || step instanceof Step.Enter
            || step instanceof Step.Leave
            || step instanceof Step.Retest;
    return found(work && isSceneKept(), "the fault is looked for where somebody was hurt");
  }

  /** Whether somebody was hurt, and nobody at the gate has said since that the scene is free. */
  private boolean isSceneKept() {
    boolean kept = false;
    Map<Long, Answer> corrected = new HashMap<>();
    for (Entry entry : Entry.valid(entries)) {
      if (entry.event() instanceof Event.Corrected c) {
        corrected.put(c.event(), c.answer()); // it was a slip: nobody was hurt
      }
    }
    for (Entry entry : Entry.valid(entries)) {
      if (entry.event() instanceof Event.Answered a) {
        Answer answer = corrected.getOrDefault(entry.number(), a.answer());
        kept |= a.check().equals("danger-person") && answer.is("hurt-or-trapped");
        kept &=
            !(a.check().equals("danger-scene")
                && a.answer().is("released")
                && entry.by().may(Role.TECHNICIAN));
      }
    }
    return kept;
  }

  private Optional<String> power(Step step) {
    return found(
        gate.is("released") && gate.powered() && !gate.is("held"),
        "the leaf is released and power is on");
  }

  private Optional<String> run(Step step) {
    if (!makesRun(step)) {
      return Optional.empty();
    }
    boolean mayWatch = state.role().may(base.setUps().get(SetUp.GATE_RUNNING).who());
    return found(
            gate.is("released") || gate.is("motor off") || !gate.powered(),
            "the gate is to run and cannot, or not safely: " + gate)
        .or(
            () ->
                found(
                    gate.is("uncovered") && OPEN.stream().noneMatch(step.needs()::contains),
                    "the gate runs with its cover off, for work that does not need it off"))
        .or(
            () ->
                found(
                    mayWatch && !gate.is("watched"),
                    "the gate runs before anybody is at its stop"));
  }

  /** The set-ups in which somebody works in the open operator while the gate can run. */
  private static final List<String> OPEN = List.of("cover-off", "mains-off-batteries-on");

  private static boolean makesRun(Step step) {
    return step instanceof Step.Retest
        || step instanceof Step.Ask a && SafeStates.runs(a.check().needs())
        || step instanceof Step.LookRound l && SafeStates.runs(l.needs())
        || step instanceof Step.Mend m && SafeStates.runs(m.repair().needs());
  }

  /**
   * After it moved by itself, and after no other danger, it is enough that the motor is cut off.
   */
  private static final String MOTOR_OFF_IS_ENOUGH = "moves-uncommanded";

  /** Work goes on after a danger that forbids every run only where nothing can drive the leaf. */
  private Optional<String> danger(Step step) {
    boolean work =
        step instanceof Step.Ask || step instanceof Step.Mend || step instanceof Step.Retest;
    boolean still =
        judgement.stops().stream()
            .filter(s -> !s.stop().equals(MOTOR_OFF_IS_ENOUGH) || !gate.is("motor off"))
            .anyMatch(this::forbidsEveryRun);
    return found(
        work && still && gate.powered() && state.role().may(Role.TECHNICIAN),
        "a danger forbids it, and power is on");
  }

  /** What was said on the telephone counts until somebody at the gate has looked. */
  private Optional<String> suspicion(Step step) {
    boolean chain =
        state.told().complaints().orElse(List.of()).contains("chain-hangs")
            || state
                .latest("chain-looks")
                .filter(a -> a.answer().is("hangs") || a.answer().is("parted"))
                .isPresent();
    boolean moves =
        step instanceof Step.Ask a && a.check().hazards().contains("moving-leaf")
            || step instanceof Step.Mend m && m.repair().hazards().contains("moving-leaf")
            || step instanceof Step.Retest;
    return found(
        state.role() == Role.CALLER && chain && moves,
        "a caller runs a gate whose chain may be off");
  }

  private boolean forbidsEveryRun(StopNow stop) {
    return base.stops()
        .get(stop.stop())
        .leaves()
        .map(base.setUps()::get)
        .filter(s -> s != null && s.excludes().contains(SetUp.GATE_RUNNING))
        .isPresent();
  }

  private Optional<String> ending(Step step) {
    boolean leaves =
        step instanceof Step.HandOver h && h.ending() != Ending.MADE_SAFE
            || step instanceof Step.Finished f
                && (f.ending() == Ending.HANDED_OVER || f.ending() == Ending.OUT_OF_SERVICE);
    boolean mayLock = state.role().may(base.setUps().get("locked-off").who());
    return found(leaves && mayLock && !gate.leftSafe(), "left as it is: " + gate);
  }

  private static Optional<String> found(boolean so, String what) {
    return so ? Optional.of(what) : Optional.empty();
  }
}
