package yett.command.call;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the time that somebody names within other words: "Tom by 14:30", "in an hour", "tomorow at
 * 9".
 */
final class Due {
  private static final Pattern IN =
      Pattern.compile(
          "(?:\\b(?:in|within) |^|, ?)(?:about )?(\\d{1,3}) ?(min|minutes?|h|hours?)\\b");
  private static final Pattern DAY = Pattern.compile("\\b(\\d{4})-(\\d\\d)-(\\d\\d)\\b");
  private static final Pattern CLOCK =
      Pattern.compile("\\b([01]?\\d|2[0-3])[:.]([0-5]\\d)(?: ?(am|pm))?\\b");

  /** A number alone is an hour only next to a word that says so: in "van 12" it is not. */
  private static final Pattern HOUR =
      Pattern.compile(
          "\\b(?:(?:at|by|around|about|before|until|tomorrow|today|tonight|[a-z]+day|morning|afternoon|evening)"
              + " (\\d{1,2})(?![\\d:.])(?: ?(am|pm|oclock))?|(\\d{1,2}) ?(am|pm|oclock))\\b");

  private static final Pattern NOW =
      Pattern.compile(
          "(?<!not )\\b(?:now|at once|immediately|(?:right|straight) ?away)$|"
              + "(?<!not )\\b(?:now|at once|immediately|(?:right|straight) ?away)[,.;]");

  private static final Pattern PART =
      Pattern.compile("\\b(morning|noon|afternoon|evening|tonight)\\b");

  /** The time for a day without a time: the start of work. */
  private static final LocalTime MORNING = LocalTime.of(8, 0);

  /**
   * The hour at which each part of the day ends, because a promised part of a day is over at its
   * end.
   */
  private static final Map<String, Integer> ENDS =
      Map.of("morning", 12, "noon", 12, "afternoon", 17, "evening", 20, "tonight", 22);

  /** Earlier hours are moved into the other half of the day: nobody comes at 3 in the night. */
  private static final int FIRST_OF_DAY = 7;

  private final String text;
  private final ZonedDateTime now;

  private Due(String words, ZonedDateTime now) {
    this.text = new TimeWords().plain(words);
    this.now = now;
  }

  /**
   * The time that the words name; empty if they name none. A time of day that has already passed
   * means tomorrow.
   */
  static Optional<Instant> in(String words, Instant now, ZoneId zone) {
    return new Due(words, now.atZone(zone)).instant();
  }

  private Optional<Instant> instant() {
    Matcher in = IN.matcher(text);
    if (in.find()) {
      ChronoUnit unit = in.group(2).startsWith("h") ? ChronoUnit.HOURS : ChronoUnit.MINUTES;
      return Optional.of(
          now.toInstant()
              .plus(Integer.parseInt(in.group(1)), unit)
              .truncatedTo(ChronoUnit.MINUTES));
    }
    Optional<LocalDate> day = day();
    Optional<LocalTime> time = time(day.isPresent());
    if (day.isEmpty() && time.isEmpty()) {
      return NOW.matcher(text).find()
          ? Optional.of(now.toInstant().truncatedTo(ChronoUnit.MINUTES))
          : Optional.empty();
    }
    ZonedDateTime due =
        day.orElse(now.toLocalDate()).atTime(time.orElse(MORNING)).atZone(now.getZone());
    return Optional.of((day.isEmpty() && due.isBefore(now) ? due.plusDays(1) : due).toInstant());
  }

  private Optional<LocalDate> day() {
    LocalDate today = now.toLocalDate();
    Matcher written = DAY.matcher(text);
    if (written.find()) {
      try {
        return Optional.of(LocalDate.parse(written.group()));
      } catch (DateTimeException e) {
        return Optional.empty(); // such as the 31st of a short month
      }
    }
    if (has("tomorrow")) {
      return Optional.of(today.plusDays(1));
    }
    return Arrays.stream(DayOfWeek.values())
        .filter(d -> has(d.name().toLowerCase(Locale.ROOT)))
        .map(d -> today.with(TemporalAdjusters.next(d)))
        .findFirst();
  }

  private boolean has(String word) {
    return text.matches(".*\\b" + word + "\\b.*");
  }

  private Optional<LocalTime> time(boolean dayNamed) {
    Matcher part = PART.matcher(text);
    Optional<String> named = part.find() ? Optional.of(part.group()) : Optional.empty();
    Matcher clock = CLOCK.matcher(text);
    if (clock.find()) {
      int hour = Integer.parseInt(clock.group(1));
      int minute = Integer.parseInt(clock.group(2));
      return Optional.of(LocalTime.of(half(hour, clock.group(3), named).orElse(hour), minute));
    }
    Matcher alone = HOUR.matcher(text);
    while (alone.find()) {
      String digits = alone.group(1) == null ? alone.group(3) : alone.group(1);
      String said = alone.group(1) == null ? alone.group(4) : alone.group(2);
      int hour = Integer.parseInt(digits);
      if (hour < 24) {
        return Optional.of(
            LocalTime.of(half(hour, said, named).orElseGet(() -> likely(hour, dayNamed)), 0));
      }
    }
    return named.map(p -> LocalTime.of(ENDS.get(p), 0));
  }

  /** The hour in the half of the day that was said; empty if none was said. */
  private static Optional<Integer> half(int hour, String said, Optional<String> part) {
    boolean later = "pm".equals(said) || part.filter(p -> ENDS.get(p) > 12).isPresent();
    boolean sooner = "am".equals(said) || part.filter("morning"::equals).isPresent();
    return hour > 12 || !later && !sooner
        ? Optional.empty()
        : Optional.of(later ? hour % 12 + 12 : hour % 12);
  }

  /**
   * Chooses between morning and afternoon: the working hour if another day is named, and today the
   * one that comes next.
   */
  private int likely(int hour, boolean dayNamed) {
    if (hour == 0 || hour >= 12) {
      return hour;
    }
    boolean isPast = !dayNamed && !LocalTime.of(hour, 0).isAfter(now.toLocalTime());
    boolean isTonight = isPast && LocalTime.of(hour + 12, 0).isAfter(now.toLocalTime());
    return isTonight || dayNamed && hour < FIRST_OF_DAY ? hour + 12 : hour;
  }
}
