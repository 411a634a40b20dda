package yett.casebook;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * A case on its way from one casebook to another.
 *
 * @param uid the name that it keeps in every casebook
 * @param id its number in the casebook it comes from
 * @param people empty unless they were asked for
 */
public record CarriedCase(
    String uid,
    CaseId id,
    String siteId,
    Instant opened,
    Summary summary,
    List<NewEvent> events,
    List<Person> people) {

  public CarriedCase {
    if (uid.isBlank() || uid.length() > 36) {
      throw new IllegalArgumentException("uid must be a text of 1 to 36 letters");
    }
    Storable.text("uid", uid);
    Storable.text("site", siteId);
    Storable.time("opened", opened);
    events = List.copyOf(events);
    people = List.copyOf(people);
  }

  /** The same course of events as a case of its own; always the same one for the same course. */
  CarriedCase apart() {
    String course = uid + events;
    return new CarriedCase(
        UUID.nameUUIDFromBytes(course.getBytes(StandardCharsets.UTF_8)).toString(),
        id,
        siteId,
        opened,
        summary,
        events,
        people);
  }
}
