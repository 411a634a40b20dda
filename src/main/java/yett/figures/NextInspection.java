package yett.figures;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Optional;
import yett.figures.GateHistory.Past;
import yett.interview.event.Ending;

/**
 * When a gate has to be inspected next.
 *
 * @param last day of the last inspection that it passed, perhaps only after a repair; empty if
 *     there was none
 * @param day when the next is due; not later than today for a gate that passed none
 */
public record NextInspection(Optional<LocalDate> last, LocalDate day) {

  /**
   * @param months between two inspections
   */
  public static NextInspection of(GateHistory history, int months, LocalDate today, ZoneId zone) {
    Optional<LocalDate> last =
        history.cases().stream()
            .filter(c -> c.inspection().isPresent() && !c.open())
            .filter(c -> passed(c) || history.cases().stream().anyMatch(m -> proves(m, c)))
            .flatMap(c -> c.onSite().stream())
            .max(Comparator.naturalOrder())
            .map(at -> at.atZone(zone).toLocalDate());
    return new NextInspection(last, last.map(d -> d.plusMonths(months)).orElse(today));
  }

  private static boolean passed(Past inspection) {
    return inspection.ending().filter(Ending::isDone).isPresent();
  }

  /** Whether a later case ended with all proofs that the inspection had left open. */
  private static boolean proves(Past later, Past inspection) {
    return later.opened().isAfter(inspection.opened()) && passed(later);
  }
}
