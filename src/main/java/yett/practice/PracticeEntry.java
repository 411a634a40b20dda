package yett.practice;

import com.fasterxml.jackson.annotation.JsonInclude;
import yett.interview.event.Event;

/**
 * One thing that happened in an exercise, as it is stored. Exactly one of its parts is not null.
 *
 * @param best the step shown as a hint
 * @param guess a repair that was made on suspicion
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PracticeEntry(
    Event event, Slip slip, Departure departure, String best, String guess) {
  static PracticeEntry of(Event event) {
    return new PracticeEntry(event, null, null, null, null);
  }

  static PracticeEntry of(Slip slip) {
    return new PracticeEntry(null, slip, null, null, null);
  }

  static PracticeEntry of(Departure departure) {
    return new PracticeEntry(null, null, departure, null, null);
  }

  static PracticeEntry hint(String best) {
    return new PracticeEntry(null, null, null, best, null);
  }

  static PracticeEntry guess(String repair) {
    return new PracticeEntry(null, null, null, null, repair);
  }
}
