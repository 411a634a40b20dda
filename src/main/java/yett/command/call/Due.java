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
import java.util.stream.Stream;

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
              + " (\\d{1,2})(?![\\d:.])(?: ?(am|pm|oclock))?|(\\d{1,2}) ?(am|pm|oclock|(?:in the |this )(?:morning|afternoon|evening)|tonight|tomorrow))\\b");

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

  private static final int LAST_OF_DAY = 22;

  /** Within so many hours, somebody may also come by night. */
  private static final int SOON = 3;

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
    return when(words, now, zone).map(When::at);
  }

  /** The same, and whether the half of the day had to be chosen. */
  static Optional<When> when(String words, Instant now, ZoneId zone) {
    return new Due(words, now.atZone(zone)).when();
  }

  /**
   * A time that was named.
   *
   * @param isChosen whether it was not said if morning or afternoon is meant
   */
  record When(Instant at, boolean isChosen) {
    private static When said(ZonedDateTime at) {
      return new When(at.toInstant().truncatedTo(ChronoUnit.MINUTES), false);
    }
  }

  private Optional<When> when() {
    Matcher in = IN.matcher(text);
    if (in.find()) {
      ChronoUnit unit = in.group(2).startsWith("h") ? ChronoUnit.HOURS : ChronoUnit.MINUTES;
      return Optional.of(When.said(now.plus(Integer.parseInt(in.group(1)), unit)));
    }
    Optional<LocalDate> day = day();
    Optional<Hand> hand = hand();
    if (day.isEmpty() && hand.isEmpty()) {
      return NOW.matcher(text).find() ? Optional.of(When.said(now)) : Optional.empty();
    }
    if (hand.filter(Hand::isOpen).isPresent()) {
      return Optional.of(new When(likely(day, hand.get().time()).toInstant(), true));
    }
    ZonedDateTime due = on(day.orElse(now.toLocalDate()), hand.map(Hand::time).orElse(MORNING));
    return Optional.of(When.said(day.isEmpty() && due.isBefore(now) ? due.plusDays(1) : due));
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

  private Optional<Hand> hand() {
    Matcher part = PART.matcher(text);
    Optional<String> named = part.find() ? Optional.of(part.group()) : Optional.empty();
    Matcher clock = CLOCK.matcher(text);
    if (clock.find()) {
      return Optional.of(
          Hand.of(clock.group(1), Integer.parseInt(clock.group(2)), clock.group(3), named));
    }
    Matcher alone = HOUR.matcher(text);
    while (alone.find()) {
      String digits = alone.group(1) == null ? alone.group(3) : alone.group(1);
      String said = alone.group(1) == null ? alone.group(4) : alone.group(2);
      if (Integer.parseInt(digits) < 24) {
        return Optional.of(Hand.of(digits, 0, said, named));
      }
    }
    return named.map(p -> new Hand(LocalTime.of(ENDS.get(p), 0), false));
  }

  /**
   * A time on the face of a clock.
   *
   * @param isOpen whether it may be the same time in the other half of the day
   */
  private record Hand(LocalTime time, boolean isOpen) {
    static Hand of(String digits, int minute, String said, Optional<String> part) {
      int hour = Integer.parseInt(digits);
      boolean later = "pm".equals(said) || part.filter(p -> ENDS.get(p) > 12).isPresent();
      boolean sooner = "am".equals(said) || part.filter("morning"::equals).isPresent();
      if (hour > 12 || !later && !sooner) {
        boolean open = hour > 0 && hour < 12 && !digits.startsWith("0");
        return new Hand(LocalTime.of(hour, minute), open);
      }
      return new Hand(LocalTime.of(later ? hour % 12 + 12 : hour % 12, minute), false);
    }
  }

  /**
   * Chooses between morning and afternoon: of another day the working hour; else the one that comes
   * next, but nobody promises in the afternoon to come in the night.
   */
  private ZonedDateTime likely(Optional<LocalDate> day, LocalTime time) {
    if (day.isPresent()) {
      return on(day.get(), time.getHour() < FIRST_OF_DAY ? time.plusHours(12) : time);
    }
    LocalDate today = now.toLocalDate();
    return Stream.of(today, today.plusDays(1))
        .flatMap(d -> Stream.of(on(d, time), on(d, time.plusHours(12))))
        .filter(at -> !at.isBefore(now))
        .filter(at -> !isNight(at.getHour()) || at.isBefore(now.plusHours(SOON)))
        .findFirst()
        .orElseThrow(); // one of the two is by day, today or tomorrow
  }

  private ZonedDateTime on(LocalDate day, LocalTime time) {
    return day.atTime(time).atZone(now.getZone());
  }

  private static boolean isNight(int hour) {
    return hour < FIRST_OF_DAY || hour >= LAST_OF_DAY;
  }
}
