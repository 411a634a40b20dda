package yett.command.common;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import yett.console.Console;
import yett.desk.Desk;

/** Warns if the casebook has events that are later than this computer's clock. */
public final class ClockNotice {
  private ClockNotice() {}

  public static void show(Desk desk, Console console) {
    desk.aheadOfClock()
        .ifPresent(
            latest -> console.say(apart(desk.clock().instant(), latest, ZoneId.systemDefault())));
  }

  /**
   * The two times in the person's time zone, so that they can be compared with a clock on the wall.
   */
  static String apart(Instant now, Instant latest, ZoneId zone) {
    DateTimeFormatter time =
        DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm z", Locale.ENGLISH).withZone(zone);
    return "The clock of this computer says "
        + time.format(now)
        + ", but the casebook has an entry dated "
        + time.format(latest)
        + ". One of the clocks is wrong; check this one. Entries stay in the order in which"
        + " they are made.";
  }
}
