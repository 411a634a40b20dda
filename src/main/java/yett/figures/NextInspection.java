package yett.figures;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import yett.figures.GateHistory.Past;

/**
 * When a gate has to be inspected again.
 *
 * @param last day of the last inspection that was closed; empty if there was none
 * @param day when the next is due: today at the latest for a gate that was never inspected
 */
public record NextInspection(Optional<LocalDate> last, LocalDate day) {

  /**
   * @param months between two inspections
   */
  public static NextInspection of(GateHistory history, int months, LocalDate today, ZoneId zone) {
    Optional<LocalDate> last =
        history.cases().stream()
            .filter(c -> c.inspection().isPresent() && !c.open())
            .flatMap(c -> NextInspection.at(c))
            .max(Comparator.naturalOrder())
            .map(at -> at.atZone(zone).toLocalDate());
    return new NextInspection(last, last.map(d -> d.plusMonths(months)).orElse(today));
  }

  private static Stream<Instant> at(Past inspection) {
    return inspection.onSite().stream();
  }
}
