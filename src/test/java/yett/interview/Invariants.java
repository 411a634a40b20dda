package yett.interview;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.StopNow;
import yett.rules.Judgement;

/** What must hold in every state of the work, whoever is there and whatever comes next. */
final class Invariants {
  private final RuleBase base;
  private final List<Entry> entries;
  private final CaseState state;
  private final Judgement judgement;
  private final Gate gate;

  Invariants(RuleBase base, List<Entry> entries, CaseState state, Judgement judgement) {
    this.base = base;
    this.entries = entries;
    this.state = state;
    this.judgement = judgement;
    this.gate = Gate.after(entries);
  }

  /** The first that a step breaks. */
  Optional<String> of(Step step) {
    try {
      step.accept(new StepWatch(base, new PlainReading(entries), state.role())).run();
    } catch (UnsafeStep unsafe) {
      return Optional.of(unsafe.getMessage());
    }
    if (isWork(step) && isSceneKept()) {
      return Optional.of("the fault is looked for where somebody was hurt");
    }
    if (gate.is("released") && gate.powered() && !gate.is("held")) {
      return Optional.of("the leaf is released and power is on");
    }
    if (makesRun(step)) {
      return Optional.ofNullable(run());
    }
    if (isDangerous() && gate.powered() && !isBeforeWork(step)) {
      return Optional.of("a danger forbids it, and power is on");
    }
    return Optional.ofNullable(ending(step));
  }

  private static boolean isWork(Step step) {
    return step instanceof Step.Ask
        || step instanceof Step.LookRound
        || step instanceof Step.Mend
        || step instanceof Step.Enter
        || step instanceof Step.Leave
        || step instanceof Step.Retest;
  }

  /** Whether somebody was hurt, and nobody at the gate has said since that the scene is free. */
  private boolean isSceneKept() {
    boolean kept = false;
    for (Entry entry : Entry.valid(entries)) {
      if (entry.event() instanceof Event.Answered a) {
        kept |= a.check().equals("danger-person") && a.answer().is("hurt-or-trapped");
        kept &=
            !(a.check().equals("danger-scene")
                && a.answer().is("released")
                && entry.by().may(Role.TECHNICIAN));
      }
    }
    return kept;
  }

  private boolean makesRun(Step step) {
    return step instanceof Step.Retest
        || step instanceof Step.Ask a && SafeStates.runs(a.check().needs())
        || step instanceof Step.LookRound l && SafeStates.runs(l.needs())
        || step instanceof Step.Mend m && SafeStates.runs(m.repair().needs());
  }

  private String run() {
    if (judgement.forbidden().contains(SetUp.ABLE_TO_RUN) && !gate.is("watched")) {
      return "the gate runs though a known fault or a danger forbids it";
    }
    if (judgement.forbidden().contains(SetUp.GATE_RUNNING)) {
      return "the gate runs though a known fault or a danger forbids it, watched or not";
    }
    if (gate.is("released") || gate.is("motor off") || gate.is("mains off")) {
      return "the gate is to run and cannot, or not safely: " + gate;
    }
    boolean mayWatch = state.role().may(base.setUps().get(SetUp.GATE_RUNNING).who());
    return mayWatch && !gate.is("watched") ? "the gate runs before anybody is at its stop" : null;
  }

  /** Whether somebody who may isolate it has made safe a danger that forbids every run. */
  private boolean isDangerous() {
    Set<String> still =
        judgement.stops().stream()
            .filter(s -> isMadeSafeHere(s))
            .map(s -> base.stops().get(s.stop()).leaves().orElse(""))
            .filter(s -> base.setUps().containsKey(s))
            .filter(s -> base.setUps().get(s).excludes().contains(SetUp.GATE_RUNNING))
            .collect(Collectors.toSet());
    return !still.isEmpty() && state.role().may(Role.TECHNICIAN);
  }

  private boolean isMadeSafeHere(StopNow stop) {
    Entry done = state.madeSafe().get(stop.stop());
    return done != null && done.number() > stop.event() && done.by().may(Role.TECHNICIAN);
  }

  private static boolean isBeforeWork(Step step) {
    return step instanceof Step.MakeSafe || step instanceof Step.Finished;
  }

  private String ending(Step step) {
    if (step instanceof Step.CloseRepaired) {
      boolean failed =
          state.answers().stream()
              .filter(a -> base.checks().get(a.check()).kind() == Check.Kind.PROOF)
              .filter(a -> a.answer().is(Check.FAIL))
              .anyMatch(a -> !state.latest(a.check()).orElseThrow().answer().is(Check.PASS));
      if (failed || !judgement.stops().isEmpty() || !judgement.forbidden().isEmpty()) {
        return "back in service with a failed proof or a danger";
      }
    }
    boolean leaves =
        step instanceof Step.HandOver h && h.ending() != Ending.MADE_SAFE
            || step instanceof Step.Finished f
                && (f.ending() == Ending.HANDED_OVER || f.ending() == Ending.OUT_OF_SERVICE);
    boolean mayLock = state.role().may(base.setUps().get("locked-off").who());
    return leaves && mayLock && !gate.leftSafe() ? "left as it is: " + gate : null;
  }
}
