package yett.command.call;

import java.util.ArrayList;
import java.util.List;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Entry;
import yett.interview.event.Event;

/**
 * Opens again what nobody could say on an earlier call. Whoever rings now may know what is wrong,
 * and should be asked.
 */
record StillUntold(Sitting sitting) {
  /** Takes back that nobody could say which complaint it is. */
  void reopen() {
    if (!sitting.moment().state().told().complaints().orElse(List.of("")).isEmpty()) {
      return; // never asked, or somebody could say
    }
    List<Entry> valid = Entry.valid(sitting.moment().entries());
    List<Event> taken = new ArrayList<>();
    for (int i = 0; i < valid.size(); i++) {
      if (valid.get(i).event() instanceof Event.Complained c && c.complaints().isEmpty()) {
        taken.add(new Event.Retracted(valid.get(i).number()));
        if (i > 0 && valid.get(i - 1).event() instanceof Event.Noted) {
          taken.add(new Event.Retracted(valid.get(i - 1).number())); // the words for it
        }
      }
    }
    record(taken);
  }

  /** Takes back the note that nobody could say how urgent it is, because somebody has now. */
  void urgencyIsTold() {
    record(urgency().stream().<Event>map(e -> new Event.Retracted(e.number())).toList());
  }

  boolean isUrgencyUntold() {
    return !urgency().isEmpty();
  }

  private void record(List<Event> events) {
    if (!events.isEmpty()) {
      sitting.record(events.toArray(Event[]::new));
    }
  }

  private List<Entry> urgency() {
    return sitting.moment().state().notes().stream()
        .filter(e -> ((Event.Noted) e.event()).tellsNoUrgency())
        .toList();
  }
}
