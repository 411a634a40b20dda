package yett.command.diagnose.opening;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.console.Block;
import yett.console.Text;
import yett.desk.OpenCase;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Verdict;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.RuleBase;
import yett.wording.InspectionWords;
import yett.wording.Wording;

/**
 * Finds what the last inspection of a gate remarked or failed, and what work was left to do in the
 * cases since, so that the next inspection sees to it.
 */
record LeftOpen(Casebook casebook, Expertise expertise) {
  /** Cases that are looked at, the newest first. */
  private static final int MOST = 8;

  /** What was left; empty if nothing was, or if nobody inspected the gate yet. */
  List<Block> at(String gate) {
    List<CaseSummary> cases = casebook.casesAt(gate).stream().limit(MOST).toList();
    if (cases.isEmpty()) {
      return List.of(); // a new gate waits for no interview
    }
    List<String> left = new ArrayList<>();
    try (Interview interview = expertise.newInterview()) {
      for (CaseSummary line : cases) {
        var entries = OpenCase.entries(casebook.events(line.id()));
        CaseState state = CaseState.of(entries);
        if (state.closed().isEmpty() || state.opened().isEmpty()) {
          continue; // it is not finished, which is told by itself
        }
        Moment moment = interview.at(entries);
        Optional<Inspection> inspection = Inspection.of(base(), moment);
        left.addAll(0, inspection.map(i -> found(i, moment)).orElseGet(() -> due(moment)));
        if (inspection.isPresent()) {
          break;
        }
      }
    }
    return left.isEmpty()
        ? List.of()
        : List.of(
            Block.paragraph(Text.strong("Left since the last inspection")),
            new Block.Numbered(left.stream().map(l -> Block.item("·", l, "")).toList()));
  }

  private RuleBase base() {
    return expertise.base();
  }

  private List<String> found(Inspection inspection, Moment moment) {
    InspectionWords words = new InspectionWords(base(), moment, ZoneId.systemDefault());
    return Stream.of(Verdict.FAIL, Verdict.REMARK)
        .flatMap(verdict -> inspection.results(verdict).stream())
        .filter(r -> !r.isProof())
        .map(
            r ->
                words.days()
                    + ", "
                    + r.verdict().words()
                    + ": "
                    + r.check().name()
                    + ", "
                    + words.line(r)
                    + ".")
        .toList();
  }

  private List<String> due(Moment moment) {
    Wording words = new Wording(base());
    return moment.judgement().followUps().stream()
        .map(f -> "Still to do after \"" + words.origin(f) + "\": " + words.card(f.card()))
        .distinct()
        .toList();
  }
}
