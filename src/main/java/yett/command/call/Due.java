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
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A time that somebody names in passing: "Tom by 14:30", "in 20 min", "tomorrow 8:00". */
final class Due {
  private static final Pattern CLOCK = Pattern.compile("\\b([01]?\\d|2[0-3])[:.]([0-5]\\d)\\b");
  private static final Pattern IN =
      Pattern.compile("\\bin (\\d{1,3}) ?(min|minutes?|h|hours?)\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern DAY = Pattern.compile("\\b(\\d{4})-(\\d\\d)-(\\d\\d)\\b");

  /** Where only a day is named: its first hour of work. */
  private static final LocalTime MORNING = LocalTime.of(8, 0);

  private Due() {}

  /** Empty if no time is named. A clock time that has gone by today is that of tomorrow. */
  static Optional<Instant> in(String words, Instant now, ZoneId zone) {
    Matcher in = IN.matcher(words);
    if (in.find()) {
      boolean hours = in.group(2).toLowerCase(Locale.ROOT).startsWith("h");
      return Optional.of(
          now.plus(Integer.parseInt(in.group(1)), hours ? ChronoUnit.HOURS : ChronoUnit.MINUTES)
              .truncatedTo(ChronoUnit.MINUTES));
    }
    ZonedDateTime here = now.atZone(zone);
    Optional<LocalDate> day = day(words, here.toLocalDate());
    Matcher clock = CLOCK.matcher(words);
    boolean timed = clock.find();
    if (day.isEmpty() && !timed) {
      return Optional.empty();
    }
    LocalTime time =
        timed
            ? LocalTime.of(Integer.parseInt(clock.group(1)), Integer.parseInt(clock.group(2)))
            : MORNING;
    ZonedDateTime due = day.orElse(here.toLocalDate()).atTime(time).atZone(zone);
    return Optional.of((day.isEmpty() && due.isBefore(here) ? due.plusDays(1) : due).toInstant());
  }

  private static Optional<LocalDate> day(String words, LocalDate today) {
    Matcher written = DAY.matcher(words);
    if (written.find()) {
      try {
        return Optional.of(LocalDate.parse(written.group()));
      } catch (DateTimeException e) {
        return Optional.empty(); // the 31st of a short month
      }
    }
    String text = words.toLowerCase(Locale.ROOT);
    if (text.matches(".*\\btomorrow\\b.*")) {
      return Optional.of(today.plusDays(1));
    }
    return Arrays.stream(DayOfWeek.values())
        .filter(d -> text.matches(".*\\b" + d.name().toLowerCase(Locale.ROOT) + "\\b.*"))
        .map(d -> today.with(TemporalAdjusters.next(d)))
        .findFirst();
  }
}
