package yett.casebook;

import java.time.Instant;

/**
 * An event that is on disk. The casebook does not interpret it.
 *
 * @param seq its number in its case: 1, 2, 3 without gaps
 * @param at when it happened
 * @param by who caused it
 * @param type the event's kind
 * @param body JSON text
 */
public record StoredEvent(long seq, Instant at, String by, String type, String body) {
  private static final String FORGOTTEN = "-forgotten";

  /**
   * Whether this is the stored form of the event. If its words were deleted here, it is still the
   * same event.
   */
  public boolean is(NewEvent event) {
    boolean forgotten = type.endsWith(FORGOTTEN) || event.type().endsWith(FORGOTTEN);
    return forgotten
        ? at.equals(event.at()) && by.equals(event.by()) && stem(type).equals(stem(event.type()))
        : equals(event.numbered(seq));
  }

  /** The same event with its words replaced. */
  StoredEvent forgotten(String body) {
    return new StoredEvent(seq, at, by, stem(type) + FORGOTTEN, body);
  }

  private static String stem(String type) {
    return type.endsWith(FORGOTTEN) ? type.substring(0, type.length() - FORGOTTEN.length()) : type;
  }
}
