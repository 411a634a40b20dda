package yett.casebook;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * A case being carried from one casebook to another.
 *
 * @param uid the unique name that it keeps in every casebook
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
  private static final Pattern UID = Pattern.compile("[A-Za-z0-9-]{1,36}");

  public CarriedCase {
    if (!UID.matcher(uid).matches()) {
      throw new IllegalArgumentException("a uid has 1 to 36 letters, digits or hyphens.");
    }
    Storable.text("site", siteId);
    Storable.time("opened", opened);
    events = List.copyOf(events);
    people = List.copyOf(people);
  }

  /** The same events as a separate case. The same events always give the same unique name. */
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
