package yett.interview.danger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.event.Ending;
import yett.interview.moment.Present;
import yett.interview.setup.KeptOff;
import yett.interview.state.CaseState;
import yett.interview.step.HandOverReason;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Pressing.Urgency;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.Stop;
import yett.plan.Planner;
import yett.rules.Conclusion.StopNow;

/**
 * The steps about dangers, which come before all other work. Dangers are asked about and made safe;
 * where the card lets this person go on, they are looked at again after a repair. The rules decide
 * what work a danger forbids. Dangers that callers are not asked about come on a screen of their
 * own, so that nobody answers them in passing.
 */
public final class Dangers {
  /** The danger of a gate that somebody else has locked or tagged off. */
  public static final String TAGGED_OFF = "danger-tagged-off";

  private final Present present;
  private final RuleBase base;
  private final Planner planner;
  private final List<StopNow> stops;

  /** The dangers of a case at this moment. */
  public Dangers(Present present, Planner planner) {
    this.present = present;
    this.planner = planner;
    this.base = present.base();
    List<String> order = List.copyOf(base.stops().keySet()); // stops for people come first
    this.stops =
        present.judgement().stops().stream()
            .sorted(Comparator.comparingInt(s -> order.indexOf(s.stop())))
            .toList();
  }

  /** The next step about dangers; empty if other work may go on. */
  public Optional<Step> step() {
    long again = present.state().work().lookAgain();
    return ask(callers().filter(this::isFromBefore))
        .or(this::askFirst)
        .or(() -> firstUnsafe(s -> s.event() > again))
        .or(() -> again == 0 ? Optional.empty() : ask(reserved().filter(this::isUnsaid)))
        .or(() -> firstUnsafe(s -> true))
        .or(this::goOn);
  }

  /**
   * A gate to which nobody has to come at once, because it was locked off, hurts nobody as it
   * stands: the list comes first, unless something graver was reported.
   */
  private Optional<Step> askFirst() {
    boolean waits = !stops.isEmpty() && stops.stream().allMatch(this::waits);
    return waits ? ask(callers().filter(this::isUnsaid)) : Optional.empty();
  }

  private boolean waits(StopNow stop) {
    return present
        .state()
        .given(stop.event())
        .filter(a -> base.telephone().urgency(a.check()) != Urgency.AT_ONCE)
        .isPresent();
  }

  private static Optional<Step> ask(Stream<Check> dangers) {
    List<Check> all = dangers.toList();
    return all.isEmpty() ? Optional.empty() : Optional.of(new Step.AskDangers(all));
  }

  private Optional<Step> firstUnsafe(Predicate<StopNow> which) {
    return stops.stream()
        .filter(which)
        .filter(s -> !SafeNow.is(s, present.state(), base))
        .findFirst()
        .map(this::makeSafe);
  }

  private Optional<Step> goOn() {
    List<Stop> cards = stops.stream().map(s -> base.stops().get(s.stop())).distinct().toList();
    if (!cards.stream().allMatch(this::goesOn)) {
      return Optional.of(new Step.HandOver(Ending.MADE_SAFE, new HandOverReason.Stopped(cards)));
    }
    Predicate<Check> due = c -> !isTold(c) || isMendedSince(c);
    return ask(callers().filter(due)).or(() -> ask(reserved().filter(due)));
  }

  /** Dangers that a caller is asked about, too. */
  private Stream<Check> callers() {
    return dangers().filter(c -> c.who() == Role.CALLER);
  }

  /** Dangers that only somebody at the gate can tell. */
  private Stream<Check> reserved() {
    return dangers().filter(c -> c.who() != Role.CALLER);
  }

  /** Whether there is no answer about it since the case was taken up again. */
  private boolean isUnsaid(Check danger) {
    return present.state().latest(danger.id()).isEmpty() || isFromBefore(danger);
  }

  private Stream<Check> dangers() {
    return base.ordinaryChecks()
        .filter(Check::danger)
        .filter(c -> !present.unavailable().contains(c.id()));
  }

  /**
   * Whether the answer is from before the case was taken up again: whoever takes it up looks at
   * dangers anew, before all else.
   */
  private boolean isFromBefore(Check danger) {
    return present
        .state()
        .latest(danger.id())
        .filter(
            a ->
                a.event() < present.state().work().lookAgain() || isSaidFromAfar(a, present.role()))
        .isPresent();
  }

  /**
   * Whether the answer came from a caller and somebody else is there now, who has to look for
   * themselves.
   */
  public static boolean isSaidFromAfar(CaseState.Answered answer, Role present) {
    return isSaidFromAfar(answer.by(), present);
  }

  static boolean isSaidFromAfar(Role by, Role present) {
    return by == Role.CALLER && present != Role.CALLER;
  }

  private boolean goesOn(Stop stop) {
    return stop.goesOn().map(present.role()::may).orElse(false);
  }

  /**
   * Whether there is an answer about a danger. "Cannot tell" counts, because the rules then assume
   * the worse.
   */
  private boolean isTold(Check danger) {
    return present
        .state()
        .latest(danger.id())
        .filter(a -> !a.yieldsTo(present.role()))
        .filter(a -> !a.answer().putOff())
        .isPresent();
  }

  /**
   * Whether something was repaired after a danger was seen, and a look can show that the danger is
   * over.
   */
  private boolean isMendedSince(Check danger) {
    long seen = present.state().latest(danger.id()).map(CaseState.Answered::event).orElse(0L);
    Set<Long> told =
        Stream.concat(present.state().answers().stream(), present.state().before().stream())
            .filter(a -> a.check().equals(danger.id()))
            .map(CaseState.Answered::event)
            .collect(Collectors.toSet());
    boolean stands =
        stops.stream()
            .filter(s -> told.contains(s.event()))
            .map(s -> base.stops().get(s.stop()).leaves())
            .anyMatch(l -> l.isPresent() && excludesRuns(l.get()));
    return stands && present.isMendedSince(seen);
  }

  /**
   * Whether a set-up excludes runs of the gate. Where it may run under watch, the proofs show that
   * the danger is over.
   */
  private boolean excludesRuns(String setUp) {
    return base.setUps().get(setUp).excludes().contains(SetUp.GATE_RUNNING);
  }

  private Step makeSafe(StopNow now) {
    Stop stop = base.stops().get(now.stop());
    Optional<List<String>> leaves = stop.leaves().flatMap(this::after);
    return new Step.MakeSafe(
        stop, stop.now(present.role(), withheld(leaves)), now.reason().because(), leaves);
  }

  /** Deeds that nobody is told: power does not come back in a state that has it locked off. */
  private Set<String> withheld(Optional<List<String>> leaves) {
    Set<String> withheld = new HashSet<>(present.judgement().withheld());
    Collection<String> then = leaves.isPresent() ? leaves.get() : present.state().work().setUps();
    if (then.stream().anyMatch(s -> KeptOff.power(s, base))) {
      withheld.add(Stop.POWER);
    }
    return withheld;
  }

  /** The set-ups in force after this one is entered; empty if this person may not enter it. */
  private Optional<List<String>> after(String safe) {
    SetUp setUp = base.setUps().get(safe);
    if (setUp == null || !present.role().may(setUp.who())) {
      return Optional.empty();
    }
    Set<String> inForce = present.state().work().setUps();
    List<String> after = new ArrayList<>(inForce);
    after.removeAll(planner.change(inForce, List.of(safe)).leave());
    after.remove(safe);
    after.add(safe);
    return Optional.of(List.copyOf(after));
  }
}
