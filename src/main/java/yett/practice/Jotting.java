package yett.practice;

import com.fasterxml.jackson.annotation.JsonInclude;
import yett.interview.Event;

/**
 * One thing that happened in an exercise, as it is kept on the disk; one of its parts is there.
 *
 * @param best what was asked for as a hint
 * @param guess a repair that was made on suspicion
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Jotting(Event event, Slip slip, Departure departure, String best, String guess) {
  static Jotting of(Event event) {
    return new Jotting(event, null, null, null, null);
  }

  static Jotting of(Slip slip) {
    return new Jotting(null, slip, null, null, null);
  }

  static Jotting of(Departure departure) {
    return new Jotting(null, null, departure, null, null);
  }

  static Jotting hint(String best) {
    return new Jotting(null, null, null, best, null);
  }

  static Jotting guess(String repair) {
    return new Jotting(null, null, null, null, repair);
  }
}
