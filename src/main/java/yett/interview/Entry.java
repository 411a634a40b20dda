package yett.interview;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Role;

/**
 * An event with its place in the case.
 *
 * @param number 1 for the first event of a case
 * @param by who was at the keyboard
 */
public record Entry(long number, Instant at, Role by, Event event) {

  /** Numbers of the events that were taken back. */
  public static Set<Long> takenBack(List<Entry> entries) {
    return entries.stream()
        .map(Entry::event)
        .filter(Event.Retracted.class::isInstance)
        .map(e -> ((Event.Retracted) e).event())
        .collect(Collectors.toSet());
  }

  /** Those that were not taken back. */
  public static List<Entry> valid(List<Entry> entries) {
    Set<Long> gone = takenBack(entries);
    return entries.stream().filter(e -> !gone.contains(e.number())).toList();
  }
}
