package yett.casebook;

import java.time.Instant;

/**
 * An event to be written.
 *
 * @param at when it happened
 * @param by who caused it
 * @param type the event's kind, a word of the writer's choice
 * @param body JSON text, returned exactly as given
 */
public record NewEvent(Instant at, String by, String type, String body) {
  public NewEvent {
    Storable.time("at", at);
    Storable.text("by", by);
    Storable.text("type", type);
    Storable.text("body", body);
  }

  StoredEvent numbered(long seq) {
    return new StoredEvent(seq, at, by, type, body);
  }
}
