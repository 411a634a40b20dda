package yett.practice;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.replay.RecordedCase;

/**
 * Makes the first events of an exercise's case: what is known of a gate before anybody looks at it.
 */
final class Opening {
  /** The time at which every exercise begins; the minutes of the cards are added to it. */
  static final Instant START = Instant.EPOCH;

  private Opening() {}

  static List<Entry> entries(RecordedCase told, String fingerprint) {
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened(told.name(), told.person(), fingerprint));
    told.site().forEach((question, answer) -> events.add(new Event.SiteAnswered(question, answer)));
    events.add(new Event.SiteTaken());
    events.add(new Event.Complained(told.complaints()));
    events.add(new Event.Happened(told.history()));
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, START, told.person(), event));
    }
    return entries;
  }
}
