package yett.interview;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the desk did about a call, in the order in which it was done.
 *
 * @param tended with the time of each and who was at the keyboard
 */
public record CallLog(List<Entry> tended) {

  public static CallLog of(List<Entry> entries) {
    return new CallLog(
        Entry.valid(entries).stream().filter(e -> e.event() instanceof Event.Tended).toList());
  }

  /** Whether a text is a time of the form in which events hold one. */
  public static boolean isTime(String text) {
    try {
      Instant.parse(text);
      return true;
    } catch (DateTimeException e) {
      return false;
    }
  }

  /** The last of these. */
  public Optional<Event.Tended> last(Tending... what) {
    return tended.stream()
        .map(e -> (Event.Tended) e.event())
        .filter(t -> List.of(what).contains(t.what()))
        .reduce((a, b) -> b);
  }

  /** Where the gate is, as it was said last. */
  public Optional<String> where() {
    return last(Tending.WHERE).map(Event.Tended::words).filter(w -> !w.isEmpty());
  }

  /** Who at the desk holds it; nobody if that was never said. */
  public Optional<String> holder() {
    return last(Tending.TAKEN, Tending.GIVEN).map(Event.Tended::words).filter(w -> !w.isEmpty());
  }

  /** How far it has got: sent, on the way, at the gate. */
  public Optional<Event.Tended> stage() {
    return last(Tending.SENT, Tending.ON_THE_WAY, Tending.AT_THE_GATE);
  }

  /** When they are to be called back, as it was agreed last. */
  public Optional<Event.Tended> callBack() {
    return last(Tending.CALL_BACK);
  }

  /** Whether somebody was sent. */
  public boolean isSent() {
    return stage().isPresent();
  }
}
