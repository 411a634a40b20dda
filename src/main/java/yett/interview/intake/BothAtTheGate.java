package yett.interview.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * What two people did at one gate without knowing of each other: whether it changed the state of
 * the gate, and which set-ups count as in force after both.
 *
 * @param before what both knew
 * @param theirs what the first person entered
 * @param inForce set-ups in force after that
 * @param mine what the second person entered
 */
record BothAtTheGate(
    RuleBase base, List<Entry> before, List<Entry> theirs, Set<String> inForce, List<Entry> mine) {

  /**
   * Whether both changed the state of the gate or told of a danger, or one changed its state while
   * the other worked there.
   */
  boolean worked() {
    return theirs.stream().anyMatch(this::changes) && mine.stream().anyMatch(this::changes)
        || theirs.stream().anyMatch(BothAtTheGate::moves)
            && mine.stream().anyMatch(BothAtTheGate::mends)
        || theirs.stream().anyMatch(BothAtTheGate::mends)
            && mine.stream().anyMatch(BothAtTheGate::moves);
  }

  /** Whether both changed set-ups, so that nobody knows which are in force. */
  boolean moved() {
    return theirs.stream().anyMatch(BothAtTheGate::moves)
        && mine.stream().anyMatch(BothAtTheGate::moves);
  }

  /** Whether an answer tells of a danger, or that nobody can tell whether there is one. */
  boolean isDanger(Event.Answered answered) {
    return danger(answered.check())
        .filter(c -> !answered.answer().is(c.outcomes().get(0).id()))
        .filter(c -> answered.answer().tells() || answered.answer().hopeless())
        .isPresent();
  }

  /** The answer that a correction by the second person makes of an earlier one. */
  Optional<Event.Answered> answeredAnew(Event.Corrected corrected) {
    return answered(corrected.event(), mine)
        .map(a -> new Event.Answered(a.check(), corrected.answer()));
  }

  /**
   * The set-ups that have to be added to those in force, each with those that it replaces. Both
   * people's stay in force as far as they can be together, for each is gone through again from the
   * outside in; of those that cannot, what takes away more power counts.
   */
  List<Event> entered() {
    if (!moved()) {
      return List.of();
    }
    Set<String> now = together();
    List<String> replaced = new ArrayList<>(inForce);
    replaced.removeAll(now);
    List<Event> entered = new ArrayList<>();
    for (String setUp : now) {
      if (!inForce.contains(setUp)) {
        entered.add(new Event.SetUpEntered(setUp, "", entered.isEmpty() ? replaced : List.of()));
      }
    }
    return entered;
  }

  private Set<String> together() {
    Set<String> all = new LinkedHashSet<>(inForce);
    all.addAll(
        CaseState.of(Stream.concat(before.stream(), mine.stream()).toList()).work().setUps());
    all.retainAll(base.setUps().keySet());
    List<SetUp> order =
        all.stream()
            .map(base.setUps()::get)
            .sorted(
                Comparator.<SetUp>comparingInt(s -> s.within().size())
                    .thenComparing(s -> -conditionsRuledOut(s)))
            .toList();
    Set<String> now = new LinkedHashSet<>();
    for (SetUp setUp : order) {
      boolean fits =
          now.containsAll(setUp.within())
              && now.stream().map(base.setUps()::get).noneMatch(s -> excludes(s, setUp));
      if (fits) {
        now.add(setUp.id());
      }
    }
    return now;
  }

  private static boolean excludes(SetUp one, SetUp other) {
    return one.excludes().contains(other.id()) || other.excludes().contains(one.id());
  }

  /** The fewer conditions there are left, such as power, the less can happen. */
  private int conditionsRuledOut(SetUp setUp) {
    return (int)
        base.setUps().values().stream()
            .filter(SetUp::isCondition)
            .filter(c -> excludes(setUp, c))
            .count();
  }

  private static boolean mends(Entry entry) {
    return entry.event() instanceof Event.Repaired r && r.done()
        || entry.event() instanceof Event.Retested;
  }

  private boolean changes(Entry entry) {
    Event event = entry.event();
    return moves(entry)
        || event instanceof Event.MadeSafe
        || event instanceof Event.Answered a && isDanger(a)
        || event instanceof Event.Corrected c && isAboutDanger(c.event())
        || event instanceof Event.Retracted r && isAboutDanger(r.event());
  }

  private static boolean moves(Entry entry) {
    return entry.event() instanceof Event.SetUpEntered
        || entry.event() instanceof Event.SetUpLeft
        || entry.event() instanceof Event.MadeSafe m && m.setUps().isPresent();
  }

  private boolean isAboutDanger(long number) {
    return Stream.of(before, theirs, mine)
        .flatMap(l -> answered(number, l).stream())
        .anyMatch(a -> danger(a.check()).isPresent());
  }

  private Optional<Check> danger(String check) {
    return Optional.ofNullable(base.checks().get(check)).filter(Check::danger);
  }

  private static Optional<Event.Answered> answered(long number, List<Entry> entries) {
    return entries.stream()
        .filter(e -> e.number() == number && e.event() instanceof Event.Answered)
        .map(e -> (Event.Answered) e.event())
        .findFirst();
  }
}
