package yett.command.cases;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.common.PastCases;
import yett.desk.Desk;
import yett.desk.GateMemory;
import yett.figures.GateHistory;
import yett.figures.NextInspection;
import yett.interview.event.Entry;

/** Finds the date of a gate's next inspection, as it was at the end of a visit. */
record NextInspections(Desk desk) {
  /**
   * The date; empty if the gate has passed no inspection yet or is no longer looked after.
   *
   * @param visit the events of the visit
   */
  Optional<LocalDate> after(String gate, List<Entry> visit, ZoneId zone) {
    if (visit.isEmpty() || desk.casebook().site(gate).flatMap(GateMemory::retired).isPresent()) {
      return Optional.empty();
    }
    Instant until = visit.get(visit.size() - 1).at();
    List<GateHistory.Past> past = new ArrayList<>();
    desk.casebook()
        .forEach(
            desk.casebook().casesAt(gate).stream()
                .filter(line -> !line.opened().isAfter(until))
                .toList(),
            (line, events) -> PastCases.of(line, events).ifPresent(past::add));
    NextInspection next =
        NextInspection.of(
            new GateHistory(past),
            desk.firmAtWork().inspectEvery(),
            LocalDate.ofInstant(until, zone),
            zone);
    return next.last().map(last -> next.day());
  }
}
