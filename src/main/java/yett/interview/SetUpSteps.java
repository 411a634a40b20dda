package yett.interview;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.plan.Advice;
import yett.plan.Planner;

/** Set-ups to enter and leave, one at a time, before what they are needed for. */
final class SetUpSteps {
  private final Present present;
  private final RuleBase base;
  private final Planner planner;

  SetUpSteps(Present present, Planner planner) {
    this.present = present;
    this.base = present.base;
    this.planner = planner;
  }

  Step ask(Check check, Optional<Advice> advice, Occasion occasion) {
    return ready(
        check.needs(),
        new Purpose(Purpose.Kind.CHECK, check.id()),
        new Step.Ask(
            check,
            base.cautionsFor(check.hazards()),
            present.judgement.expectation(check.id()),
            advice,
            occasion));
  }

  Step mend(Repair repair, Optional<Advice> plan, Occasion occasion) {
    return ready(
        repair.needs(),
        new Purpose(Purpose.Kind.REPAIR, repair.id()),
        new Step.Mend(repair, base.cautionsFor(repair.hazards()), plan, occasion));
  }

  Step retest() {
    return ready(running(), Purpose.of(Purpose.Kind.TRIAL), new Step.Retest());
  }

  /** Before a case closes, every set-up is left in order, as far as this person may. */
  Step closing(Step then) {
    return present.state.work().setUps().stream()
        .map(base.setUps()::get)
        .filter(s -> s != null && present.role().may(s.who()))
        .reduce((a, b) -> b)
        .<Step>map(s -> new Step.Leave(s, Purpose.of(Purpose.Kind.CLOSING)))
        .orElse(then);
  }

  /** The set-ups in which this person tries the gate. */
  private List<String> running() {
    SetUp running = base.setUps().get(SetUp.GATE_RUNNING);
    return running != null && present.role().may(running.who()) ? List.of(running.id()) : List.of();
  }

  private Step ready(Collection<String> needs, Purpose purpose, Step then) {
    Planner.Change change = planner.change(present.state.work().setUps(), needs);
    if (!change.leave().isEmpty()) {
      return new Step.Leave(base.setUps().get(change.leave().get(0)), purpose);
    }
    if (!change.enter().isEmpty()) {
      SetUp setUp = base.setUps().get(change.enter().get(0));
      return new Step.Enter(setUp, base.cautionsFor(setUp.hazards()), purpose);
    }
    return then;
  }
}
