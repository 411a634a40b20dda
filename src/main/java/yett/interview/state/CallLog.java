package yett.interview.state;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.Tending;

/**
 * What the desk did about a call.
 *
 * @param tended the actions in order, each with its time and who was at the keyboard
 */
public record CallLog(List<Entry> tended) {

  public static CallLog of(List<Entry> entries) {
    return new CallLog(
        Entry.valid(entries).stream().filter(e -> e.event() instanceof Event.Tended).toList());
  }

  /** Whether a text is a time in the form used in events. */
  public static boolean isTime(String text) {
    try {
      Instant.parse(text);
      return true;
    } catch (DateTimeException e) {
      return false;
    }
  }

  /** The last action of one of these kinds. */
  public Optional<Event.Tended> last(Tending... what) {
    return lastEntry(what).map(e -> (Event.Tended) e.event());
  }

  private Optional<Entry> lastEntry(Tending... what) {
    return tended.stream()
        .filter(e -> List.of(what).contains(((Event.Tended) e.event()).what()))
        .reduce((a, b) -> b);
  }

  /** The place of the gate, as last recorded. */
  public Optional<String> where() {
    return last(Tending.WHERE).map(Event.Tended::words).filter(w -> !w.isEmpty());
  }

  /** The person at the desk who holds the call; empty if none was recorded. */
  public Optional<String> holder() {
    return last(Tending.TAKEN, Tending.GIVEN).map(Event.Tended::words).filter(w -> !w.isEmpty());
  }

  /** Everybody at the desk who has held the call. */
  public List<String> holders() {
    return tended.stream()
        .map(e -> (Event.Tended) e.event())
        .filter(t -> t.what() == Tending.TAKEN || t.what() == Tending.GIVEN)
        .map(Event.Tended::words)
        .filter(w -> !w.isEmpty())
        .distinct()
        .toList();
  }

  /** The latest stage of the visit: sent, on the way or at the gate. */
  public Optional<Event.Tended> stage() {
    return last(Tending.SENT, Tending.ON_THE_WAY, Tending.AT_THE_GATE);
  }

  /** Whether a child is on the telephone, and no grown-up has come to it since. */
  public boolean isChild() {
    return child().isPresent();
  }

  /** Whether a child is on the telephone, and this event was recorded before it was. */
  public boolean isBeforeChild(Entry entry) {
    return child().filter(child -> entry.number() < child.number()).isPresent();
  }

  /** Since when a child is on the telephone. */
  private Optional<Entry> child() {
    return lastEntry(Tending.CHILD, Tending.GROWN_UP)
        .filter(e -> ((Event.Tended) e.event()).what() == Tending.CHILD);
  }

  /** The agreed time of the call back, as last recorded. */
  public Optional<Event.Tended> callBack() {
    return last(Tending.CALL_BACK);
  }

  /** Whether somebody was sent. */
  public boolean isSent() {
    return stage().isPresent();
  }
}
