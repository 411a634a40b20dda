package yett.casebook;

import java.time.Instant;

/**
 * A gate as installed, as described at a moment.
 *
 * @param id the same for every revision: the name of the gate, to the letter
 * @param name as people called the gate then
 * @param body JSON text
 * @param at when it was described so
 */
public record SiteRecord(String id, String name, String body, Instant at) {
  public SiteRecord {
    Storable.text("id", id);
    Storable.text("name", name);
    Storable.text("body", body);
    Storable.time("at", at);
  }
}
