package yett.interview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Merges what two people entered on one case at the same time. The first person's events stay. The
 * second person's events follow where they still fit; duplicates are dropped; what disagrees
 * becomes a note. So no answer is lost and none is replaced without asking.
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

  private final Function<Event, String> told;
  private final List<Entry> newer;
  private final List<Entry> theirs;
  private final CaseState state;
  private final Map<Long, Long> numbers = new HashMap<>();
  private final List<Entry> added = new ArrayList<>();
  private final List<Clash> clashes = new ArrayList<>();
  private Optional<Ending> unclosed = Optional.empty();
  private long next;

  private Meanwhile(Function<Event, String> told, List<Entry> stored, int known, List<Entry> mine) {
    this.told = told;
    this.newer = stored.subList(Math.min(known, stored.size()), stored.size());
    this.theirs = newer.stream().filter(n -> find(n, mine).isEmpty()).toList();
    this.state = CaseState.of(stored);
    this.next = stored.size() + 1L;
  }

  /**
   * Merges two continuations of a case.
   *
   * @param told the wording of an event for a note
   * @param stored the case as stored now, including the first person's events; perhaps also some of
   *     the second person's, if they did not learn that these had arrived
   * @param known how many stored events the second person knew
   * @param mine the second person's events, numbered from there
   */
  public static Together of(
      Function<Event, String> told, List<Entry> stored, int known, List<Entry> mine) {
    var meanwhile = new Meanwhile(told, stored, known, mine);
    mine.forEach(meanwhile::bring);
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

  private void bring(Entry mine) {
    Event event = mine.event();
    Optional<Entry> arrived = find(mine, newer);
    if (arrived.isPresent()) {
      numbers.put(mine.number(), arrived.get().number());
    } else if (state.closed().isPresent()) {
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
        state.answers().stream()
            .filter(a -> a.check().equals(e.check()) && isTheirs(a.event()))
            .reduce((a, b) -> b);
    if (other.isEmpty()) {
      if (theirs.stream().anyMatch(t -> t.event() instanceof Event.Repaired r && r.done())) {
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
    if (!stands.answer().tells()) {
      add(mine, new Event.Corrected(stands.event(), e.answer()));
      return;
    }
    note(mine, "At the same time: " + told.apply(e));
    clashes.add(new Clash(e.check(), stands.event(), stands.answer(), e.answer()));
  }

  private void kept(Entry mine, Event.Kept e) {
    Optional<Long> first = number(e.first());
    Optional<Long> second = number(e.second());
    if (first.isPresent() && second.isPresent()) {
      add(mine, new Event.Kept(first.get(), second.get()));
    }
  }

  private void corrected(Entry mine, Event.Corrected e) {
    Optional<Event.Corrected> fits = number(e.event()).map(n -> new Event.Corrected(n, e.answer()));
    if (fits.isEmpty()) {
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

  private boolean isTheirs(long event) {
    return theirs.stream().anyMatch(t -> t.number() == event);
  }

  /** Whether the first person entered the same event. */
  private boolean isSaid(Event event) {
    return theirs.stream().anyMatch(t -> t.event().equals(event))
        || event instanceof Event.SetUpEntered e && state.work().setUps().contains(e.setUp())
        || event instanceof Event.SiteTaken && state.told().siteTaken();
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
