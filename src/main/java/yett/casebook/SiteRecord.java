package yett.casebook;

import java.time.Instant;

/**
 * A gate as installed, as it was described at some time.
 *
 * @param id the same for every revision: the exact name of the gate
 * @param name the name that the gate had then
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
