package yett.interview;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Judgement;

/**
 * A case before its next step is chosen: state, conclusions and belief, with shared queries on
 * them.
 */
final class Present {
  final RuleBase base;
  final CaseState state;
  final Judgement judgement;
  private final Believed believed;

  /** Chance that each cause is present now; worked out at first use. */
  private double[] remaining;

  /** Checks and repairs that the rules allow nobody now. */
  final Set<String> unavailable;

  Present(RuleBase base, CaseState state, Judgement judgement, Believed believed) {
    this.base = base;
    this.state = state;
    this.judgement = judgement;
    this.believed = believed;
    this.unavailable = judgement.unavailable();
  }

  Belief belief() {
    return believed.belief();
  }

  Trail trail() {
    return believed.trail();
  }

  /**
   * Chance that each cause is present now, in the order of the model. Callers must not change the
   * array.
   */
  double[] remaining() {
    if (remaining == null) {
      remaining = belief().remaining();
    }
    return remaining;
  }

  /** Chance that this repair removes a cause that is present. */
  double chance(Repair repair) {
    double[] there = remaining();
    double left = 1;
    for (Map.Entry<String, Double> removed : repair.removes().entrySet()) {
      left *= 1 - removed.getValue() * there[belief().model().indexOf(removed.getKey())];
    }
    return 1 - left;
  }

  /**
   * Whether the answer belongs to a check that searches for the fault, not to a danger, proof or
   * complaint.
   */
  boolean isLook(CaseState.Answered answered) {
    Check check = base.checks().get(answered.check());
    return check != null && check.kind() == Check.Kind.CHECK && !check.danger();
  }

  /** The cautions that belong to hazards at this gate, the gravest first. */
  List<Caution> cautions(List<String> hazards) {
    return base.cautionsFor(hazards, state.told().site());
  }

  /** Whether nobody may enter this set-up now. */
  boolean isForbidden(String setUp) {
    return judgement.forbidden().contains(setUp);
  }

  /**
   * Whether a stop leaves the gate in this state. Such a state is gone through before a lock-off
   * within it: it may give the power back that the lock-off then takes away.
   */
  boolean isLeftByStop(SetUp setUp) {
    return base.stops().values().stream().anyMatch(s -> s.leaves().equals(Optional.of(setUp.id())));
  }

  Role role() {
    return state.role();
  }

  boolean isCall() {
    return role() == Role.CALLER;
  }

  /** The answer to a check since the last repair, unless this person is to be asked again. */
  Optional<Answer> answer(String check) {
    return answerAfter(0, check);
  }

  /** The answer to a check since the last repair, if it was given after an event. */
  Optional<Answer> answerAfter(long event, String check) {
    return state
        .answer(check)
        .filter(a -> a.event() > event && !a.yieldsTo(role()))
        .map(CaseState.Answered::answer);
  }

  /** Whether somebody said that the check cannot be told. */
  boolean isHopeless(String check) {
    return state
        .latest(check)
        .filter(a -> !a.yieldsTo(role()))
        .map(a -> a.answer().hopeless())
        .orElse(false);
  }

  boolean isOpenTo(Check check) {
    return role().may(check.who()) && !unavailable.contains(check.id());
  }

  /** Whether a repair was done after an event. */
  boolean isMendedSince(long event) {
    return state.work().deeds().stream()
        .anyMatch(d -> d.number() > event && d.event() instanceof Event.Repaired);
  }

  /** Repairs that were done, in order. */
  Stream<Repair> repairs() {
    return state.work().deeds().stream()
        .map(Entry::event)
        .filter(Event.Repaired.class::isInstance)
        .map(e -> base.repairs().get(((Event.Repaired) e).repair()));
  }
}
