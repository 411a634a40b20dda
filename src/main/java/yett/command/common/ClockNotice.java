package yett.command.common;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import yett.console.Console;
import yett.desk.Desk;

/** Says so if the casebook knows of a later time than it is by this computer. */
public final class ClockNotice {
  private ClockNotice() {}

  public static void show(Desk desk, Console console) {
    desk.aheadOfClock()
        .ifPresent(
            latest -> console.say(apart(desk.clock().instant(), latest, ZoneId.systemDefault())));
  }

  /** In the time of the person, who looks at a clock on the wall. */
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
