package yett.practice;

import com.fasterxml.jackson.annotation.JsonInclude;
import yett.interview.Event;

/**
 * One thing that happened in an exercise, as it is kept on the disk; one of its parts is there.
 *
 * @param best what was asked for as a hint
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Jotting(Event event, Slip slip, Departure departure, String best) {
  static Jotting of(Event event) {
    return new Jotting(event, null, null, null);
  }

  static Jotting of(Slip slip) {
    return new Jotting(null, slip, null, null);
  }

  static Jotting of(Departure departure) {
    return new Jotting(null, null, departure, null);
  }

  static Jotting hint(String best) {
    return new Jotting(null, null, null, best);
  }
}
