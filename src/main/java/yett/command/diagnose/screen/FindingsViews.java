package yett.command.diagnose.screen;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yett.console.Block;
import yett.console.Text;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Verdict;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.InspectionWords;
import yett.wording.Wording;

/**
 * Shows the end of an inspection: what was found, what to do about it, and what was not inspected.
 */
public record FindingsViews(RuleBase base) {

  /** What was found, and what to do about it. */
  public List<Block> of(Moment moment) {
    Inspection inspection = Inspection.of(base, moment).orElseThrow();
    InspectionWords words = new InspectionWords(base, moment, ZoneId.systemDefault());
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Inspection for " + inspection.kind().word()));
    blocks.add(Block.paragraph(inspection.progress() + " inspected: " + inspection.sum() + "."));
    for (Verdict verdict : List.of(Verdict.FAIL, Verdict.REMARK)) {
      List<Block.Item> items = new ArrayList<>();
      for (Inspection.Result r : inspection.results(verdict)) {
        items.add(
            Block.item(
                "·",
                r.check().ask() + " " + Wording.capital(words.line(r)),
                (verdict == Verdict.FAIL ? InspectionWords.urgency(r) : "")
                    + words
                        .whatToDo(r)
                        .map(w -> (verdict == Verdict.FAIL ? "; " : "") + w)
                        .orElse("")));
      }
      if (!items.isEmpty()) {
        blocks.add(Block.paragraph(Text.strong(Wording.capital(verdict.words()))));
        blocks.add(new Block.Numbered(items));
      }
    }
    List<String> ahead = words.ahead(inspection);
    if (!ahead.isEmpty()) {
      blocks.add(Block.paragraph(Text.strong(InspectionWords.AHEAD)));
      blocks.add(dotted(ahead));
    }
    blocks.addAll(notInspected(moment, inspection));
    return blocks;
  }

  /**
   * What was not inspected. Proofs that were not made are shown with the state in which the gate is
   * left.
   */
  private List<Block> notInspected(Moment moment, Inspection inspection) {
    var open = inspection.results(Verdict.OPEN).stream().filter(r -> !r.isProof()).toList();
    if (open.isEmpty()) {
      return List.of();
    }
    var mine = open.stream().filter(r -> mayMake(moment, r)).toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.paragraph(Text.strong("Not inspected")));
    blocks.add(places(mine));
    if (moment.judgement().forbidden().contains(SetUp.GATE_RUNNING)) {
      blocks.add(
          Block.paragraph(
              "The gate must not run as it was found: what needs a run is inspected after the"
                  + " repair."));
    }
    reserved(moment, open)
        .ifPresent(
            role -> {
              blocks.add(Block.paragraph("For " + Wording.aPerson(role) + ":"));
              blocks.add(places(open.stream().filter(r -> !mine.contains(r)).toList()));
              blocks.add(
                  Block.paragraph(
                      "They can be added until the inspection is closed: save, then resume with"
                          + " --as "
                          + role.word()
                          + "."
                          + (inspection.owedByElectrician().isEmpty()
                              ? ""
                              : " A new gate is not complete without them.")));
            });
    return blocks;
  }

  private static Block places(List<Inspection.Result> results) {
    return dotted(InspectionWords.byPlace(results));
  }

  private static Block dotted(List<String> lines) {
    return new Block.Numbered(lines.stream().map(l -> Block.item("·", l, "")).toList());
  }

  private static boolean mayMake(Moment moment, Inspection.Result result) {
    return moment.state().role().may(result.check().who());
  }

  /** The role that could make the checks for which this person is not qualified. */
  private static Optional<Role> reserved(Moment moment, List<Inspection.Result> open) {
    return open.stream()
        .filter(r -> !mayMake(moment, r))
        .map(r -> r.check().who())
        .max(Comparator.naturalOrder());
  }
}
