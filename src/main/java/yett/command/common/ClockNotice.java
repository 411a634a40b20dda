package yett.command.common;

import java.time.temporal.ChronoUnit;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Desk;

/** Says so if the casebook knows of a later time than it is by this computer. */
public final class ClockNotice {
  private ClockNotice() {}

  public static void show(Desk desk, Console console) {
    desk.aheadOfClock()
        .ifPresent(
            latest ->
                console.show(
                    Block.paragraph(
                        "By the clock of this computer it is "
                            + desk.clock().instant().truncatedTo(ChronoUnit.SECONDS)
                            + ", but the casebook has an entry of "
                            + latest.truncatedTo(ChronoUnit.SECONDS)
                            + ". One of the clocks is wrong; look at this one. What is entered"
                            + " stays in the order in which it is entered.")));
  }
}
