package yett.interview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Brings together what two people entered on one case at the same time. The first one's events
 * stand; of the second one's, what still fits comes after them, what says the same is not said
 * twice, and what does not agree is kept as a note, so that nobody's answer is lost and none is put
 * in another's place without asking.
 */
public final class Meanwhile {

  /**
   * What becomes of the second one's events.
   *
   * @param theirs the first one's
   * @param added to be stored after the first one's, in order, each at the time it was entered
   * @param clashes both answered the same check, and not the same
   * @param unclosed the second one's closing, which they are to think over: the case had moved on
   */
  public record Together(
      List<Entry> theirs, List<Entry> added, List<Clash> clashes, Optional<Ending> unclosed) {}

  /**
   * Two answers to one check.
   *
   * @param event number of the answer that stands
   */
  public record Clash(String check, long event, Answer theirs, Answer mine) {}

  private final RuleBase base;
  private final List<Entry> newer;
  private final List<Entry> theirs;
  private final CaseState state;
  private final Map<Long, Long> numbers = new HashMap<>();
  private final List<Entry> added = new ArrayList<>();
  private final List<Clash> clashes = new ArrayList<>();
  private Optional<Ending> unclosed = Optional.empty();
  private long next;

  private Meanwhile(RuleBase base, List<Entry> stored, int known, List<Entry> mine) {
    this.base = base;
    this.newer = stored.subList(Math.min(known, stored.size()), stored.size());
    this.theirs = newer.stream().filter(n -> find(n, mine).isEmpty()).toList();
    this.state = CaseState.of(stored);
    this.next = stored.size() + 1L;
  }

  /**
   * @param stored the case as it is stored now, the first one's events included; perhaps also some
   *     of the second one's, if they were not told that these had arrived
   * @param known how many of these the second one knew
   * @param mine the second one's events, numbered from there
   */
  public static Together of(RuleBase base, List<Entry> stored, int known, List<Entry> mine) {
    var meanwhile = new Meanwhile(base, stored, known, mine);
    mine.forEach(meanwhile::bring);
    return new Together(
        meanwhile.theirs,
        List.copyOf(meanwhile.added),
        List.copyOf(meanwhile.clashes),
        meanwhile.unclosed);
  }

  /** The same event, entered by the same person at the same instant, under whatever number. */
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
    } else if (event instanceof Event.Noted || event instanceof Event.Said) {
      add(mine, event);
    } else if (state.closed().isPresent()) {
      note(mine, event instanceof Event.Closed ? "" : "After the closing: " + told(event));
    } else if (event instanceof Event.Answered e) {
      answered(mine, e);
    } else if (event instanceof Event.Retracted e) {
      number(e.event())
          .map(Event.Retracted::new)
          .filter(r -> !said(r))
          .ifPresent(r -> add(mine, r));
    } else if (event instanceof Event.Corrected e) {
      corrected(mine, e);
    } else if (event instanceof Event.Kept e) {
      kept(mine, e);
    } else if (event instanceof Event.Closed e) {
      unclosed = Optional.of(e.ending());
      note(mine, "Closed as " + e.ending().words() + " before the other's answers were seen");
    } else if (!said(event)) {
      others(mine, event);
    }
  }

  private void others(Entry mine, Event event) {
    if (event instanceof Event.Complained e) {
      Set<String> all = union(state.complaints(), e.complaints());
      add(mine, new Event.Complained(List.copyOf(all)));
    } else if (event instanceof Event.Happened e) {
      Set<String> all = union(state.histories(), e.histories());
      add(mine, new Event.Happened(List.copyOf(all)));
    } else if (event instanceof Event.Pressed e) {
      Optional<List<String>> other =
          theirs.stream()
              .filter(t -> t.event() instanceof Event.Pressed)
              .map(t -> ((Event.Pressed) t.event()).pressing())
              .reduce((a, b) -> b);
      add(mine, new Event.Pressed(List.copyOf(union(other, e.pressing()))));
    } else if (event instanceof Event.SiteAnswered e && otherSite(e)) {
      note(mine, "At the same time: " + told(event));
    } else if (event instanceof Event.Retested e && e.cured() && retested()) {
      note(mine, "At the same time: " + told(event)); // that it still fails, stands
    } else {
      add(mine, event);
    }
  }

  private void answered(Entry mine, Event.Answered e) {
    Optional<CaseState.Answered> other =
        state.answers().stream()
            .filter(a -> a.check().equals(e.check()) && isTheirs(a.event()))
            .reduce((a, b) -> b);
    if (other.isEmpty()) {
      if (theirs.stream().anyMatch(t -> t.event() instanceof Event.Repaired r && r.done())) {
        note(mine, "Before the repair: " + told(e)); // it may be otherwise since
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
    note(mine, "At the same time: " + told(e));
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
      note(mine, "At the same time changed to: " + told(null, e.answer()));
    } else if (!said(fits.get())) {
      add(mine, fits.get());
    }
  }

  /** Where an event stands now that the second one referred to; empty if it became a note. */
  private Optional<Long> number(long event) {
    boolean before = newer.isEmpty() || event < newer.get(0).number();
    return before ? Optional.of(event) : Optional.ofNullable(numbers.get(event));
  }

  private boolean isTheirs(long event) {
    return theirs.stream().anyMatch(t -> t.number() == event);
  }

  /** Whether the first one entered just this. */
  private boolean said(Event event) {
    return theirs.stream().anyMatch(t -> t.event().equals(event))
        || event instanceof Event.SetUpEntered e && state.setUps().contains(e.setUp())
        || event instanceof Event.SiteTaken && state.siteTaken();
  }

  private boolean otherSite(Event.SiteAnswered mine) {
    return theirs.stream()
        .anyMatch(
            t -> t.event() instanceof Event.SiteAnswered s && s.question().equals(mine.question()));
  }

  private boolean retested() {
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

  private String told(Event event) {
    if (event instanceof Event.Answered e) {
      Check check = base.checks().get(e.check());
      return (check == null ? e.check() : check.ask()) + " " + told(check, e.answer());
    }
    if (event instanceof Event.SiteAnswered e) {
      return e.question().replace('-', ' ') + ": " + e.answer();
    }
    if (event instanceof Event.Repaired e) {
      return e.repair().replace('-', ' ') + (e.done() ? ": done" : ": could not be done");
    }
    if (event instanceof Event.Retested e) {
      return "the gate " + e.words();
    }
    return EventText.write(event);
  }

  private static String told(Check check, Answer answer) {
    return answer.map(
        chosen -> {
          boolean known = check != null && check.indexOf(chosen.outcome()) >= 0;
          return known
              ? check.outcomes().get(check.indexOf(chosen.outcome())).text()
              : chosen.outcome();
        },
        Answer.Read::typed,
        () -> "cannot be told",
        () -> "cannot be told");
  }
}
