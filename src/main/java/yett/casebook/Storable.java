package yett.casebook;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Refuses text that a database would silently change or cut. */
final class Storable {
  private static final DateTimeFormatter SORTABLE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSSSSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);
  private static final Instant EARLIEST = Instant.parse("1000-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("9999-12-31T23:59:59.999999999Z");

  private Storable() {}

  /**
   * Refuses U+0000, which ends a text in some databases, and unpaired surrogates, which have no
   * UTF-8 form.
   */
  static void text(String what, String value) {
    if (value.indexOf('\0') >= 0 || !StandardCharsets.UTF_8.newEncoder().canEncode(value)) {
      throw new IllegalArgumentException(
          "The event's or site's "
              + what
              + " holds U+0000 or half a surrogate pair, which cannot be stored."
              + " In JSON, write it as an escape.");
    }
  }

  static void time(String what, Instant value) {
    if (value.isBefore(EARLIEST) || value.isAfter(LATEST)) {
      throw new IllegalArgumentException(
          what + " \"" + value + "\" is outside the years 1000 to 9999. Check the clock.");
    }
  }

  /** Whether a column holds a time as {@link #written} writes it. */
  static boolean isTime(String column) {
    try {
      return written(Instant.parse(column)).equals(column);
    } catch (DateTimeException e) {
      return false;
    }
  }

  static String written(Instant at) {
    return SORTABLE.format(at);
  }
}
