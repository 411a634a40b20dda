package yett.wording;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import yett.interview.event.Event;

/** Says what the desk did about a call. */
public final class CallWords {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private CallWords() {}

  /** What was done, with times in the time zone of this computer. */
  public static String of(Event.Tended event) {
    String words = event.words().isEmpty() ? "" : ": " + event.words();
    return event.what().words() + words + due(event);
  }

  private static String due(Event.Tended event) {
    return event.due().isEmpty() ? "" : " (by " + when(Instant.parse(event.due())) + ")";
  }

  /** A time by which somebody comes, as it is said on the telephone. */
  public static String by(Instant at, Instant now) {
    LocalDate day = at.atZone(ZoneId.systemDefault()).toLocalDate();
    LocalDate today = now.atZone(ZoneId.systemDefault()).toLocalDate();
    String time = TIME.format(at.atZone(ZoneId.systemDefault()));
    if (day.equals(today)) {
      return time + " today";
    }
    return day.equals(today.plusDays(1)) ? time + " tomorrow, " + DAY.format(day) : when(at);
  }

  public static String when(Instant at) {
    return WHEN.format(at.atZone(ZoneId.systemDefault()));
  }
}
