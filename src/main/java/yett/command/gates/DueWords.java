package yett.command.gates;

import java.time.LocalDate;
import java.time.ZoneId;
import yett.desk.Desk;
import yett.figures.NextInspection;

/** Says in words when a gate is to be inspected. */
final class DueWords {
  private final ZoneId zone = ZoneId.systemDefault();
  private final LocalDate today;
  private final int months;

  DueWords(Desk desk) {
    this.today = LocalDate.ofInstant(desk.clock().instant(), zone);
    this.months = desk.firmAtWork().inspectEvery();
  }

  int months() {
    return months;
  }

  NextInspection next(Gates.Gate gate) {
    return NextInspection.of(gate.history(), months, today, zone);
  }

  boolean isDue(NextInspection next) {
    return !next.day().isAfter(today);
  }

  /** The words after the gate's name in a list. */
  String words(NextInspection next) {
    if (next.last().isEmpty()) {
      return "due now; no inspection passed yet";
    }
    return (isDue(next) ? "due since " : "due ")
        + next.day()
        + "; last passed "
        + next.last().get();
  }

  /** The line on the gate's own page. */
  String line(Gates.Gate gate) {
    return gate.retired()
        .map(day -> "Retired on " + day + "; no inspection is due.")
        .orElseGet(() -> "Next inspection: " + words(next(gate)) + ".");
  }
}
