package yett.shell;

import java.util.List;
import java.util.Optional;
import yett.casebook.StoredEvent;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.EventText;
import yett.knowledge.Role;

/** The events of a case as they stand in the casebook, read for the interview. */
final class StoredEntries {
  private StoredEntries() {}

  /**
   * All of them; in the place of one that this version cannot read stands a note that says so, with
   * its number, so that the case goes on without it.
   */
  static List<Entry> readable(List<StoredEvent> stored) {
    return stored.stream().map(e -> read(e).orElseGet(() -> note(e))).toList();
  }

  /**
   * @throws IllegalArgumentException if one cannot be read
   */
  static List<Entry> whole(List<StoredEvent> stored) {
    return stored.stream()
        .map(
            e ->
                read(e)
                    .orElseThrow(
                        () -> new IllegalArgumentException("event " + e.seq() + unreadable(e))))
        .toList();
  }

  /** Why an event cannot be read; empty if it can. */
  static String unreadable(StoredEvent stored) {
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

  private static Entry note(StoredEvent e) {
    Role by = by(e.by()).orElse(Role.CALLER); // whoever it was, with the fewest rights
    String words = "This entry" + unreadable(e) + ". It is kept, and counts for nothing.";
    return new Entry(e.seq(), e.at(), by, new Event.Noted(words));
  }

  private static Optional<Role> by(String word) {
    return Role.words().contains(word) ? Optional.of(Role.named(word)) : Optional.empty();
  }
}
