package yett.interview.event;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Role;

/**
 * An event with its number, time and author.
 *
 * @param number 1 for the first event of a case
 * @param by who was at the keyboard
 */
public record Entry(long number, Instant at, Role by, Event event) {

  /** Numbers of the events that were retracted. */
  public static Set<Long> takenBack(List<Entry> entries) {
    return entries.stream()
        .map(Entry::event)
        .filter(Event.Retracted.class::isInstance)
        .map(e -> ((Event.Retracted) e).event())
        .collect(Collectors.toSet());
  }

  /** The entries that were not retracted. */
  public static List<Entry> valid(List<Entry> entries) {
    Set<Long> gone = takenBack(entries);
    return entries.stream().filter(e -> !gone.contains(e.number())).toList();
  }
}
