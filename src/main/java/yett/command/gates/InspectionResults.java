package yett.command.gates;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.casebook.Casebook;
import yett.desk.Desk;
import yett.desk.StoredEntries;
import yett.figures.GateHistory;
import yett.interview.course.Interview;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Verdict;

/** Says what each inspection of a gate found out of order. */
final class InspectionResults {
  private InspectionResults() {}

  /** The failures and remarks of all inspections of a gate in words, by number of the case. */
  static Map<String, String> of(Desk desk, GateHistory history) {
    Map<String, String> results = new HashMap<>();
    Casebook casebook = desk.casebook();
    try (Interview interview = desk.expertise().newInterview()) {
      for (GateHistory.Past past : history.cases()) {
        if (past.inspection().isPresent()) {
          var entries = StoredEntries.readable(casebook.events(casebook.find(past.id())));
          Inspection.of(desk.base(), interview.at(entries))
              .ifPresent(inspection -> results.put(past.id(), words(inspection)));
        }
      }
    }
    return results;
  }

  private static String words(Inspection inspection) {
    return Stream.of(
            named("Failed: ", inspection.results(Verdict.FAIL)),
            named("Remarks: ", inspection.results(Verdict.REMARK)))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private static String named(String heading, List<Inspection.Result> results) {
    return results.isEmpty()
        ? ""
        : results.stream()
            .map(r -> r.check().name())
            .collect(Collectors.joining("; ", heading, "."));
  }
}
