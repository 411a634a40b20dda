package yett.desk;

import java.util.List;
import java.util.Optional;
import yett.casebook.StoredEvent;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.knowledge.Role;

/** Converts the events of a case from the casebook for the interview. */
public final class StoredEntries {
  private StoredEntries() {}

  /** Converts all events. Those that this version cannot read become entries that say so. */
  public static List<Entry> readable(List<StoredEvent> stored) {
    return stored.stream().map(StoredEntries::entry).toList();
  }

  /**
   * Converts one event. A role that this version does not know counts as the one with the fewest
   * rights.
   */
  public static Entry entry(StoredEvent e) {
    Optional<Role> by = by(e.by());
    Event event =
        by.flatMap(known -> event(e.body())).orElseGet(() -> new Event.Unread(e.type(), e.body()));
    return new Entry(e.seq(), e.at(), by.orElse(Role.CALLER), event);
  }

  /**
   * Converts all events.
   *
   * @throws IllegalArgumentException if one cannot be read
   */
  public static List<Entry> whole(List<StoredEvent> stored) {
    List<Entry> entries = readable(stored);
    for (Entry entry : entries) {
      if (entry.event() instanceof Event.Unread) {
        throw new IllegalArgumentException("event " + entry.number() + unreadable(entry));
      }
    }
    return entries;
  }

  /** Why an event could not be read; empty if it could. */
  public static String unreadable(Entry entry) {
    if (entry.event() instanceof Event.Unread unread) {
      return event(unread.text()).isPresent()
          ? " is by an unknown role"
          : " is nothing that this version of the program knows";
    }
    return "";
  }

  private static Optional<Event> event(String body) {
    try {
      return Optional.of(EventText.read(body));
    } catch (IllegalArgumentException another) {
      return Optional.empty();
    }
  }

  private static Optional<Role> by(String word) {
    return Role.words().contains(word) ? Optional.of(Role.named(word)) : Optional.empty();
  }
}
