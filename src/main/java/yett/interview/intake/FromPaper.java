package yett.interview.intake;

import java.util.List;
import java.util.stream.Stream;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.state.CaseState;

/**
 * Inspections that are known only from a paper: nothing but readings, all stored at one time, and
 * the word of whoever brought them in that the gate passed.
 */
public final class FromPaper {
  private static final String BEGINNING = "Brought in from ";
  private static final String END = ": by the paper the gate passed on that day.";

  private FromPaper() {}

  /**
   * The note that such an inspection has.
   *
   * @param source name of the file
   */
  public static Event.Noted note(String source) {
    return new Event.Noted(BEGINNING + source + END);
  }

  /** Whether these events, up to the closing, are such an inspection and nothing else. */
  static boolean is(List<Entry> entries) {
    return CaseState.of(entries).isInspection()
        && entries.stream().map(Entry::at).distinct().count() == 1
        && entries.stream().map(Entry::event).allMatch(FromPaper::isFromPaper)
        && events(entries).anyMatch(Event.Answered.class::isInstance)
        && events(entries).anyMatch(Event.Noted.class::isInstance);
  }

  private static Stream<Event> events(List<Entry> entries) {
    return entries.stream().map(Entry::event);
  }

  private static boolean isFromPaper(Event event) {
    return event instanceof Event.Opened
        || event instanceof Event.SiteAnswered
        || event instanceof Event.SiteTaken
        || event instanceof Event.Answered a && a.answer().reading().isPresent()
        || event instanceof Event.Noted n
            && n.text().startsWith(BEGINNING)
            && n.text().endsWith(END);
  }
}
