package yett.interview.moment;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.belief.Belief;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.evidence.Believed;
import yett.interview.evidence.Trail;
import yett.interview.state.CaseState;
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
public final class Present {
  private final RuleBase base;
  private final CaseState state;
  private final Judgement judgement;
  private final Believed believed;

  /** Chance that each cause is present now; worked out at first use. */
  private double[] remaining;

  private final Set<String> unavailable;

  /** A case as it stands, with what the rules conclude and what is believed. */
  public Present(RuleBase base, CaseState state, Judgement judgement, Believed believed) {
    this.base = base;
    this.state = state;
    this.judgement = judgement;
    this.believed = believed;
    this.unavailable = judgement.unavailable();
  }

  /** The rule base that the case is worked out with. */
  public RuleBase base() {
    return base;
  }

  /** Where the case stands after its events. */
  public CaseState state() {
    return state;
  }

  /** What the rules conclude. */
  public Judgement judgement() {
    return judgement;
  }

  /** Checks and repairs that the rules allow nobody now. */
  public Set<String> unavailable() {
    return unavailable;
  }

  /** The belief about the causes. */
  public Belief belief() {
    return believed.belief();
  }

  /** How the belief came about. */
  public Trail trail() {
    return believed.trail();
  }

  /**
   * Chance that each cause is present now, in the order of the model. Callers must not change the
   * array.
   */
  public double[] remaining() {
    if (remaining == null) {
      remaining = belief().remaining();
    }
    return remaining;
  }

  /** Chance that this repair removes a cause that is present. */
  public double chance(Repair repair) {
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
  public boolean isLook(CaseState.Answered answered) {
    Check check = base.checks().get(answered.check());
    return check != null && check.kind() == Check.Kind.CHECK && !check.danger();
  }

  /** The cautions that belong to hazards at this gate, the gravest first. */
  public List<Caution> cautions(List<String> hazards) {
    return base.cautionsFor(hazards, state.told().site());
  }

  /** Whether nobody may enter this set-up now. */
  public boolean isForbidden(String setUp) {
    return judgement.forbidden().contains(setUp);
  }

  /**
   * Whether a stop leaves the gate in this state. Such a state is gone through before a lock-off
   * within it: it may give the power back that the lock-off then takes away.
   */
  public boolean isLeftByStop(SetUp setUp) {
    return base.stops().values().stream().anyMatch(s -> s.leaves().equals(Optional.of(setUp.id())));
  }

  /** Who answers now. */
  public Role role() {
    return state.role();
  }

  /** Whether somebody is asked on the telephone. */
  public boolean isCall() {
    return role() == Role.CALLER;
  }

  /** The answer to a check since the last repair, unless this person is to be asked again. */
  public Optional<Answer> answer(String check) {
    return answerAfter(0, check);
  }

  /** The answer to a check since the last repair, if it was given after an event. */
  public Optional<Answer> answerAfter(long event, String check) {
    return state
        .answer(check)
        .filter(a -> a.event() > event && !a.yieldsTo(role()))
        .map(CaseState.Answered::answer);
  }

  /** Whether somebody said that the check cannot be told. */
  public boolean isHopeless(String check) {
    return state
        .latest(check)
        .filter(a -> !a.yieldsTo(role()))
        .map(a -> a.answer().hopeless())
        .orElse(false);
  }

  /** Whether this person may make the check and the rules allow it now. */
  public boolean isOpenTo(Check check) {
    return role().may(check.who()) && !unavailable.contains(check.id());
  }

  /** Whether a repair was done after an event. */
  public boolean isMendedSince(long event) {
    return state.work().deeds().stream()
        .anyMatch(d -> d.number() > event && d.event() instanceof Event.Repaired);
  }

  /** Repairs that were done, in order. */
  public Stream<Repair> repairs() {
    return state.work().deeds().stream()
        .map(Entry::event)
        .filter(Event.Repaired.class::isInstance)
        .map(e -> base.repairs().get(((Event.Repaired) e).repair()));
  }
}
