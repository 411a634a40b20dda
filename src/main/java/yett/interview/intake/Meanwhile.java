package yett.interview.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.interview.state.CaseState;
import yett.knowledge.RuleBase;

/**
 * Merges what two people entered on one case at the same time. The first person's events stay. The
 * second person's events follow where they still fit; duplicates are dropped; what disagrees
 * becomes a note. So no answer is lost and none is replaced without asking.
 *
 * <p>A danger never becomes a note: it counts whatever the first person said, repaired or closed.
 * Nobody takes over from a merge what the gate is like: if both worked at it, dangers are asked
 * about again and every state in force is gone through again ({@link BothAtTheGate}).
 */
public final class Meanwhile {

  /**
   * The result of merging.
   *
   * @param theirs the first person's events
   * @param added events to store after them, in order, each with the time it was entered
   * @param clashes different answers of the two to the same check
   * @param unclosed the second person's closing, which they have to reconsider because the case had
   *     moved on
   */
  public record Together(
      List<Entry> theirs, List<Entry> added, List<Clash> clashes, Optional<Ending> unclosed) {}

  /**
   * Two different answers to one check.
   *
   * @param event number of the answer that stays
   */
  public record Clash(String check, long event, Answer theirs, Answer mine) {}

  private final RuleBase base;
  private final Function<Event, String> told;
  private final List<Entry> mine;
  private final BothAtTheGate both;

  /** Whether the first person closed the case. */
  private final boolean closed;

  private boolean takenUp;
  private final List<Entry> newer;
  private final List<Entry> theirs;
  private final CaseState state;

  /** The case without what has already arrived of the second person's events. */
  private final CaseState without;

  private final Map<Long, Long> numbers = new HashMap<>();
  private final List<Entry> added = new ArrayList<>();
  private final List<Clash> clashes = new ArrayList<>();
  private Optional<Ending> unclosed = Optional.empty();
  private long next;

  private Meanwhile(
      RuleBase base,
      Function<Event, String> told,
      List<Entry> stored,
      int known,
      List<Entry> mine) {
    this.base = base;
    this.told = told;
    this.mine = mine;
    List<Entry> before = stored.subList(0, Math.min(known, stored.size()));
    this.newer = stored.subList(before.size(), stored.size());
    this.theirs = newer.stream().filter(n -> !isOfTheSameInstant(n, mine)).toList();
    this.state = CaseState.of(stored);
    this.without = CaseState.of(Stream.concat(before.stream(), theirs.stream()).toList());
    this.next = stored.size() + 1L;
    this.both = new BothAtTheGate(base, before, theirs, state.work().setUps(), mine);
    this.closed =
        CaseState.of(stored.stream().filter(e -> !isMyTakingUp(e)).toList()).closed().isPresent();
  }

  /**
   * Merges two continuations of a case.
   *
   * @param base tells which answers tell of a danger, and which set-ups can be in force together
   * @param told the wording of an event for a note
   * @param stored the case as stored now, including the first person's events; perhaps also some of
   *     the second person's, if they did not learn that these had arrived
   * @param known how many stored events the second person knew
   * @param mine the second person's events, numbered from there
   */
  public static Together of(
      RuleBase base,
      Function<Event, String> told,
      List<Entry> stored,
      int known,
      List<Entry> mine) {
    var meanwhile = new Meanwhile(base, told, stored, known, mine);
    mine.forEach(meanwhile::bring);
    meanwhile.goThroughAgain();
    return new Together(
        meanwhile.theirs,
        List.copyOf(meanwhile.added),
        List.copyOf(meanwhile.clashes),
        meanwhile.unclosed);
  }

  /** The same event, entered by the same person at the same instant, whatever its number. */
  private static Optional<Entry> find(Entry sought, List<Entry> among) {
    return among.stream()
        .filter(e -> e.at().equals(sought.at()))
        .filter(e -> e.by() == sought.by() && e.event().equals(sought.event()))
        .findFirst();
  }

  /**
   * Whether somebody entered anything at the instant of this entry. What was delivered before may
   * stand in another form than it was entered in: a correction as an answer, an answer as a note.
   */
  private static boolean isOfTheSameInstant(Entry entry, List<Entry> entered) {
    return entered.stream().anyMatch(e -> e.at().equals(entry.at()) && e.by() == entry.by());
  }

  /** Whether an earlier delivery of the same events took the case up because of a danger. */
  private boolean isMyTakingUp(Entry entry) {
    return entry.event() instanceof Event.TakenUp
        && find(entry, mine).isEmpty()
        && isOfTheSameInstant(entry, mine);
  }

  /** Nobody has seen the gate as it stands after what both did there. */
  private void goThroughAgain() {
    if (!mine.isEmpty() && both.worked() && (!closed || takenUp)) {
      Entry last = mine.get(mine.size() - 1);
      both.entered().forEach(e -> add(last, e));
      add(last, new Event.Returned());
    }
  }

  private void bring(Entry mine) {
    Event event = mine.event();
    Optional<Entry> arrived = find(mine, newer);
    if (arrived.isPresent()) {
      numbers.put(mine.number(), arrived.get().number());
    } else if (closed) {
      event.accept(new Afterwards(mine)).run();
    } else {
      event.accept(new Bringing(mine)).run();
    }
  }

  /** Handles an event that comes after the first person's closing. */
  private final class Afterwards implements SomeEvents<Runnable> {
    private final Entry mine;

    Afterwards(Entry mine) {
      this.mine = mine;
    }

    @Override
    public Runnable noted(Event.Noted event) {
      return () -> add(mine, event);
    }

    @Override
    public Runnable said(Event.Said event) {
      return () -> add(mine, event);
    }

    @Override
    public Runnable tended(Event.Tended event) {
      return () -> add(mine, event);
    }

    @Override
    public Runnable closed(Event.Closed event) {
      return () -> {};
    }

    @Override
    public Runnable answered(Event.Answered event) {
      return event.answer().tells() && both.isDanger(event) ? () -> danger(event) : other(event);
    }

    @Override
    public Runnable corrected(Event.Corrected event) {
      return both.answeredAnew(event)
          .filter(a -> a.answer().tells() && both.isDanger(a))
          .<Runnable>map(a -> () -> danger(a))
          .orElseGet(() -> other(event));
    }

    /** A closed case is open again: somebody is in danger, whatever it was closed as. */
    private void danger(Event.Answered event) {
      if (!takenUp) {
        takenUp = true;
        add(mine, new Event.TakenUp());
      }
      add(mine, event);
    }

    @Override
    public Runnable other(Event event) {
      return () -> note(mine, "After the closing: " + told.apply(event));
    }
  }

  /** Handles an event while the case is open. */
  private final class Bringing implements SomeEvents<Runnable> {
    private final Entry mine;

    Bringing(Entry mine) {
      this.mine = mine;
    }

    @Override
    public Runnable noted(Event.Noted event) {
      return () -> add(mine, event);
    }

    @Override
    public Runnable said(Event.Said event) {
      return () -> add(mine, event);
    }

    @Override
    public Runnable tended(Event.Tended event) {
      return () -> add(mine, event);
    }

    @Override
    public Runnable forceTaken(Event.ForceTaken event) {
      return () -> add(mine, event);
    }

    @Override
    public Runnable answered(Event.Answered event) {
      return () -> Meanwhile.this.answered(mine, event);
    }

    @Override
    public Runnable retracted(Event.Retracted event) {
      return () ->
          number(event.event())
              .filter(n -> !isTheirs(n)) // what they said themselves stays
              .map(Event.Retracted::new)
              .filter(r -> !isSaid(r))
              .ifPresent(r -> add(mine, r));
    }

    @Override
    public Runnable corrected(Event.Corrected event) {
      return () -> Meanwhile.this.corrected(mine, event);
    }

    @Override
    public Runnable kept(Event.Kept event) {
      return () -> Meanwhile.this.kept(mine, event);
    }

    @Override
    public Runnable closed(Event.Closed event) {
      return () -> {
        unclosed = Optional.of(event.ending());
        note(mine, "Closed as " + event.ending().words() + " before the other's answers were seen");
      };
    }

    @Override
    public Runnable setUpEntered(Event.SetUpEntered event) {
      return both.moved() ? () -> besides(event) : () -> add(mine, event);
    }

    @Override
    public Runnable setUpLeft(Event.SetUpLeft event) {
      return both.moved() ? () -> besides(event) : () -> add(mine, event);
    }

    @Override
    public Runnable madeSafe(Event.MadeSafe event) {
      return both.moved() && event.setUps().isPresent() ? () -> besides(event) : other(event);
    }

    @Override
    public Runnable complained(Event.Complained event) {
      Set<String> all = union(state.told().complaints(), event.complaints());
      return ifNew(event, () -> add(mine, new Event.Complained(List.copyOf(all))));
    }

    @Override
    public Runnable happened(Event.Happened event) {
      Set<String> all = union(state.told().histories(), event.histories());
      return ifNew(event, () -> add(mine, new Event.Happened(List.copyOf(all))));
    }

    @Override
    public Runnable pressed(Event.Pressed event) {
      Optional<List<String>> other =
          theirs.stream()
              .filter(t -> t.event() instanceof Event.Pressed)
              .map(t -> ((Event.Pressed) t.event()).pressing())
              .reduce((a, b) -> b);
      return ifNew(
          event, () -> add(mine, new Event.Pressed(List.copyOf(union(other, event.pressing())))));
    }

    @Override
    public Runnable siteAnswered(Event.SiteAnswered event) {
      return otherSite(event) ? ifNew(event, () -> besides(event)) : other(event);
    }

    @Override
    public Runnable retested(Event.Retested event) {
      boolean stillFails = event.cured() && isRetested();
      return stillFails ? ifNew(event, () -> besides(event)) : other(event);
    }

    @Override
    public Runnable other(Event event) {
      return ifNew(event, () -> add(mine, event));
    }

    private Runnable ifNew(Event event, Runnable then) {
      return isSaid(event) ? () -> {} : then;
    }

    private void besides(Event event) {
      note(mine, "At the same time: " + told.apply(event));
    }
  }

  private void answered(Entry mine, Event.Answered e) {
    Optional<CaseState.Answered> other =
        without.answers().stream()
            .filter(a -> a.check().equals(e.check()) && isTheirs(a.event()))
            .reduce((a, b) -> b);
    boolean danger = both.isDanger(e);
    if (hasBrought(e.check())) {
      add(mine, e); // the second person's own later answer to what already stands
      return;
    }
    if (other.isEmpty()) {
      if (!danger
          && theirs.stream().anyMatch(t -> t.event() instanceof Event.Repaired r && r.done())) {
        note(mine, "Before the repair: " + told.apply(e)); // the repair may have changed it
      } else {
        add(mine, e);
      }
      return;
    }
    CaseState.Answered stands = other.get();
    if (stands.answer().equals(e.answer()) || !e.answer().tells()) {
      numbers.put(mine.number(), stands.event());
      return;
    }
    if (danger) {
      add(mine, e); // one of the two saw it: the gate stops until it is looked at again
      return;
    }
    if (!stands.answer().tells()) {
      add(mine, new Event.Corrected(stands.event(), e.answer()));
      return;
    }
    note(mine, "At the same time: " + told.apply(e));
    if (isDanger(stands.event())) {
      return; // it stands; nobody chooses it away at the desk
    }
    clashes.add(new Clash(e.check(), stands.event(), stands.answer(), e.answer()));
  }

  /** Whether an answer by the second person to this check has been added. */
  private boolean hasBrought(String check) {
    return added.stream()
        .anyMatch(a -> a.event() instanceof Event.Answered b && b.check().equals(check));
  }

  private void kept(Entry mine, Event.Kept e) {
    Optional<Long> first = number(e.first());
    Optional<Long> second = number(e.second());
    if (first.isPresent() && second.isPresent()) {
      add(mine, new Event.Kept(first.get(), second.get()));
    }
  }

  private void corrected(Entry mine, Event.Corrected e) {
    Optional<Event.Corrected> fits =
        number(e.event())
            .filter(n -> !isTheirs(n) || !isDanger(n))
            .map(n -> new Event.Corrected(n, e.answer()));
    Optional<Event.Answered> danger = both.answeredAnew(e).filter(both::isDanger);
    if (fits.isEmpty() && danger.isPresent()) {
      answered(mine, danger.get());
    } else if (fits.isEmpty()) {
      note(mine, "At the same time: " + told.apply(e));
    } else if (!isSaid(fits.get())) {
      add(mine, fits.get());
    }
  }

  /** The new number of an event that the second person referred to; empty if it became a note. */
  private Optional<Long> number(long event) {
    boolean before = newer.isEmpty() || event < newer.get(0).number();
    return before ? Optional.of(event) : Optional.ofNullable(numbers.get(event));
  }

  /** Whether an answer of this number tells of a danger, as it counts now. */
  private boolean isDanger(long event) {
    return state
        .given(event)
        .filter(a -> both.isDanger(new Event.Answered(a.check(), a.answer())))
        .isPresent();
  }

  private boolean isTheirs(long event) {
    return theirs.stream().anyMatch(t -> t.number() == event);
  }

  /** Whether the first person entered the same event. */
  private boolean isSaid(Event event) {
    return theirs.stream().anyMatch(t -> t.event().equals(event));
  }

  private boolean otherSite(Event.SiteAnswered mine) {
    return theirs.stream()
        .anyMatch(
            t -> t.event() instanceof Event.SiteAnswered s && s.question().equals(mine.question()));
  }

  private boolean isRetested() {
    return theirs.stream().anyMatch(t -> t.event() instanceof Event.Retested);
  }

  private static Set<String> union(Optional<List<String>> theirs, List<String> mine) {
    Set<String> all = new LinkedHashSet<>(theirs.orElse(List.of()));
    all.addAll(mine);
    return all;
  }

  private void note(Entry mine, String text) {
    if (!text.isEmpty()) {
      add(mine, new Event.Noted(text));
      numbers.remove(mine.number());
    }
  }

  private void add(Entry mine, Event event) {
    Entry entry = new Entry(next, mine.at(), mine.by(), event);
    Optional<Entry> arrived = find(entry, newer);
    numbers.put(mine.number(), arrived.orElse(entry).number());
    if (arrived.isEmpty()) {
      added.add(entry);
      next++;
    }
  }
}
