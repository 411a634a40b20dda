package yett.command.diagnose.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.casebook.CaseId;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.command.diagnose.screen.StillInForce;
import yett.console.Console;
import yett.desk.Absence;
import yett.desk.OpenCase;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.interview.inspection.Inspection;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.wording.CallWords;
import yett.wording.Wording;

/**
 * Offers the inspections of a gate that were left in the middle, so that after a crash nobody
 * inspects again what was inspected, at a gate that nobody remembers to be locked off.
 */
record OpenInspections(Casebook casebook, Expertise expertise, Console console) {
  /**
   * Asks which of them to go on with. The inner value is empty for a new one, or if there is none;
   * the outer one if the person leaves.
   */
  Optional<Optional<CaseId>> goOn(String gate) {
    List<CaseId> open = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    try (Interview interview = expertise.newInterview()) {
      for (CaseSummary line : casebook.casesAt(gate)) {
        List<Entry> entries = OpenCase.entries(casebook.events(line.id()));
        CaseState state = CaseState.of(entries);
        if (state.isInspection() && state.closed().isEmpty()) {
          open.add(line.id());
          lines.add(line(line.id(), interview.at(entries)));
        }
      }
    }
    return open.isEmpty() ? Optional.of(Optional.empty()) : chosen(open, lines);
  }

  private Optional<Optional<CaseId>> chosen(List<CaseId> open, List<String> lines) {
    return GoOnWith.ask(
        console,
        open.size() == 1
            ? "This gate has an unfinished inspection"
            : "This gate has unfinished inspections",
        open,
        lines,
        "Number to go on with it; 0 to begin a new inspection",
        words -> {});
  }

  private String line(CaseId id, Moment moment) {
    Inspection inspection = Inspection.of(expertise.base(), moment).orElseThrow();
    Entry last = Absence.since(moment.entries()).last();
    Set<String> inForce = moment.state().work().setUps();
    return "%s, for %s: %s inspected, %s. Left %s by %s, %s."
        .formatted(
            id,
            inspection.kind().word(),
            inspection.progress(),
            inspection.sum(),
            CallWords.when(last.at()),
            Wording.aPerson(last.by()),
            inForce.isEmpty()
                ? "nothing in force there"
                : "in force there: " + StillInForce.names(expertise.base(), inForce));
  }
}
