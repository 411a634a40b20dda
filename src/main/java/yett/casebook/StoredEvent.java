package yett.casebook;

import java.time.Instant;

/**
 * An event that is on the disk. The casebook does not look into it.
 *
 * @param seq its place in its case: 1, 2, 3 without gaps
 * @param at when it happened
 * @param by who caused it
 * @param type the event's kind
 * @param body JSON text
 */
public record StoredEvent(long seq, Instant at, String by, String type, String body) {

  /** Whether it is this event, with its number. */
  public boolean is(NewEvent event) {
    return equals(event.numbered(seq));
  }
}
