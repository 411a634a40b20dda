package yett.desk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.casebook.CarriedCase;
import yett.casebook.Casebook;
import yett.casebook.ImportedCase;
import yett.casebook.NewEvent;
import yett.casebook.Person;
import yett.casebook.StoredEvent;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.event.Tending;

/**
 * Joins the two courses of a case that went on both here and elsewhere, where one side did nothing
 * but keep the call up to date (who was sent, a remark). That says nothing about the gate, so the
 * other side's work is as good as if it had been done here, its closing included. If both sides
 * worked on the case, somebody has to settle it.
 */
public final class TwoCourses {
  /** What the desk does about a call without a word of the gate. */
  private static final Set<Tending> DESK =
      EnumSet.of(
          Tending.WHERE,
          Tending.SENT,
          Tending.NOT_REACHED,
          Tending.TAKEN,
          Tending.GIVEN,
          Tending.CALL_BACK,
          Tending.ON_THE_WAY,
          Tending.AT_THE_GATE);

  private final List<StoredEvent> here;
  private final List<StoredEvent> there;
  private final List<Entry> entriesThere;

  /** The number here of each event there that is here too. */
  private final Map<Long, Long> numbers = new HashMap<>();

  private TwoCourses(ImportedCase conflict) {
    this.here = conflict.here();
    this.there = conflict.there();
    this.entriesThere = StoredEntries.readable(there);
    match();
  }

  /**
   * Adds what is missing here, if the two courses can be joined.
   *
   * @param conflict what importing the case came to
   * @return how many events were added; empty if nothing was done because both sides worked on it
   */
  public static Optional<Integer> join(Desk desk, CarriedCase carried, ImportedCase conflict) {
    var courses = new TwoCourses(conflict);
    if (!courses.canBeJoined()) {
      return Optional.empty();
    }
    List<NewEvent> missing = courses.missing();
    Casebook casebook = desk.casebook();
    if (!missing.isEmpty()) {
      casebook.append(conflict.id(), courses.last(), missing.toArray(NewEvent[]::new));
      List<Person.Part> known = casebook.people(conflict.id()).stream().map(Person::part).toList();
      carried.people().stream()
          .filter(p -> !known.contains(p.part()))
          .forEach(p -> casebook.savePerson(conflict.id(), p));
      try (OpenCase open = desk.open(conflict.id(), Optional.empty())) {
        open.nameIt();
      }
    }
    return Optional.of(missing.size());
  }

  /**
   * Finds what came here earlier. It may have got another number here, and a correction then names
   * another event. So time, writer and kind decide; those of one moment are in the same order.
   */
  private void match() {
    List<StoredEvent> left = new ArrayList<>(here);
    for (StoredEvent event : there) {
      left.stream()
          .filter(h -> h.at().equals(event.at()) && h.by().equals(event.by()))
          .filter(h -> kind(h).equals(kind(event)))
          .findFirst()
          .ifPresent(
              h -> {
                numbers.put(event.seq(), h.seq());
                left.remove(h);
              });
    }
  }

  private static Class<?> kind(StoredEvent event) {
    return StoredEntries.entry(event).event().getClass();
  }

  private boolean canBeJoined() {
    List<Entry> missing = entriesThere.stream().filter(e -> !isHere(e.number())).toList();
    if (missing.stream().anyMatch(e -> e.event() instanceof Event.Unread)) {
      return false;
    }
    List<Entry> own =
        StoredEntries.readable(here).stream()
            .filter(e -> !numbers.containsValue(e.number()))
            .toList();
    return missing.stream().allMatch(TwoCourses::isOfTheDesk)
        || own.stream().allMatch(TwoCourses::isOfTheDesk);
  }

  private static boolean isOfTheDesk(Entry entry) {
    if (entry.event() instanceof Event.Noted note) {
      return !note.text().startsWith(Event.Noted.FORCED);
    }
    return entry.event() instanceof Event.Tended tended && DESK.contains(tended.what());
  }

  private boolean isHere(long numberThere) {
    return numbers.containsKey(numberThere);
  }

  private long last() {
    return here.get(here.size() - 1).seq();
  }

  private List<NewEvent> missing() {
    List<NewEvent> missing = new ArrayList<>();
    for (int i = 0; i < there.size(); i++) {
      StoredEvent event = there.get(i);
      if (!isHere(event.seq())) {
        missing.add(
            new NewEvent(
                event.at(), event.by(), event.type(), body(event, entriesThere.get(i).event())));
        numbers.put(event.seq(), last() + missing.size());
      }
    }
    return missing;
  }

  /** The text of an event, which names other events by their numbers here. */
  private String body(StoredEvent stored, Event event) {
    if (event instanceof Event.Retracted r) {
      return EventText.write(new Event.Retracted(number(r.event())));
    }
    if (event instanceof Event.Corrected c) {
      return EventText.write(new Event.Corrected(number(c.event()), c.answer()));
    }
    if (event instanceof Event.Kept k) {
      return EventText.write(new Event.Kept(number(k.first()), number(k.second())));
    }
    return stored.body();
  }

  private long number(long there) {
    return numbers.getOrDefault(there, there);
  }
}
