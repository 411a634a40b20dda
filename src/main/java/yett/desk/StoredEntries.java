package yett.desk;

import java.util.List;
import java.util.Optional;
import yett.casebook.StoredEvent;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.EventText;
import yett.knowledge.Role;

/** The events of a case as they stand in the casebook, read for the interview. */
public final class StoredEntries {
  private StoredEntries() {}

  /** All of them; those that this version cannot read stand for themselves. */
  public static List<Entry> readable(List<StoredEvent> stored) {
    return stored.stream().map(StoredEntries::entry).toList();
  }

  /** Whoever is unknown to this version of the program counts as one with the fewest rights. */
  public static Entry entry(StoredEvent e) {
    return read(e)
        .orElseGet(
            () ->
                new Entry(
                    e.seq(),
                    e.at(),
                    by(e.by()).orElse(Role.CALLER),
                    new Event.Unread(e.type(), e.body())));
  }

  /**
   * @throws IllegalArgumentException if one cannot be read
   */
  public static List<Entry> whole(List<StoredEvent> stored) {
    return stored.stream()
        .map(
            e ->
                read(e)
                    .orElseThrow(
                        () -> new IllegalArgumentException("event " + e.seq() + unreadable(e))))
        .toList();
  }

  /** Why an event cannot be read; empty if it can. */
  public static String unreadable(StoredEvent stored) {
    if (by(stored.by()).isEmpty()) {
      return " is by nobody who can answer";
    }
    return read(stored).isPresent() ? "" : " is nothing that this version of the program knows";
  }

  private static Optional<Entry> read(StoredEvent e) {
    try {
      Event event = EventText.read(e.body());
      return by(e.by()).map(role -> new Entry(e.seq(), e.at(), role, event));
    } catch (IllegalArgumentException another) {
      return Optional.empty();
    }
  }

  private static Optional<Role> by(String word) {
    return Role.words().contains(word) ? Optional.of(Role.named(word)) : Optional.empty();
  }
}
