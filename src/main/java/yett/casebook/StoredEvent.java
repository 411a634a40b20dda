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
  private static final String FORGOTTEN = "-forgotten";

  /**
   * Whether it is this event, with its number. One whose words were forgotten is still the one that
   * has them elsewhere.
   */
  public boolean is(NewEvent event) {
    boolean forgotten = type.endsWith(FORGOTTEN) || event.type().endsWith(FORGOTTEN);
    return forgotten
        ? at.equals(event.at()) && by.equals(event.by()) && stem(type).equals(stem(event.type()))
        : equals(event.numbered(seq));
  }

  /** The same without its words. */
  StoredEvent forgotten(String body) {
    return new StoredEvent(seq, at, by, stem(type) + FORGOTTEN, body);
  }

  private static String stem(String type) {
    return type.endsWith(FORGOTTEN) ? type.substring(0, type.length() - FORGOTTEN.length()) : type;
  }
}
