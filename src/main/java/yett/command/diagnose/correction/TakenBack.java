package yett.command.diagnose.correction;

import java.util.List;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** Names what is taken back, so that nobody takes back more than is meant. */
public final class TakenBack {
  private TakenBack() {}

  /**
   * What these events were, with a full stop.
   *
   * @param numbers of events that were entered together
   */
  public static String words(Moment moment, RuleBase base, List<Long> numbers) {
    List<Event> events =
        moment.entries().stream()
            .filter(e -> numbers.contains(e.number()))
            .map(Entry::event)
            .filter(Event.Undoable.class::isInstance)
            .toList();
    String words =
        events.size() == 1
            ? new Wording(base).event(added(moment, events.get(0)))
            : together(base, events.get(0)) + " (" + events.size() + " answers)";
    return words.endsWith("?") ? words : words + ".";
  }

  /**
   * What an event adds to what was told before it; a list is stored anew with all that is on it.
   */
  private static Event added(Moment moment, Event event) {
    if (!(event instanceof Event.Complained all)) {
      return event;
    }
    List<String> before =
        Entry.valid(moment.entries()).stream()
            .map(Entry::event)
            .takeWhile(e -> e != event)
            .filter(Event.Complained.class::isInstance)
            .flatMap(e -> ((Event.Complained) e).complaints().stream())
            .toList();
    List<String> more = all.complaints().stream().filter(c -> !before.contains(c)).toList();
    return more.isEmpty() ? event : new Event.Complained(more);
  }

  /** The list that several events answered, told by its first. */
  private static String together(RuleBase base, Event first) {
    if (!(first instanceof Event.Answered answered)) {
      return "the details of the gate";
    }
    Check check = base.checks().get(answered.check());
    return check.danger()
        ? "the list of dangers"
        : "the round of looks: " + check.place().orElseThrow().name();
  }
}
