package yett.command.diagnose;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yett.console.Block;
import yett.console.SignalWord;
import yett.console.Text;
import yett.interview.Inspection;
import yett.interview.Moment;
import yett.interview.Prospects;
import yett.interview.Step;
import yett.interview.Verdict;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.wording.Figures;
import yett.wording.InspectionWords;
import yett.wording.UsualRange;
import yett.wording.Wording;

/** The screens of an inspection: what is asked at one place, and what was made of the answers. */
final class InspectionViews {
  private final RuleBase base;
  private final CautionViews cautions;

  InspectionViews(RuleBase base, CautionViews cautions) {
    this.base = base;
    this.cautions = cautions;
  }

  Inspection inspection(Moment moment) {
    return Inspection.of(base, moment).orElseThrow();
  }

  InspectionWords words(Moment moment) {
    return new InspectionWords(base, moment, ZoneId.systemDefault());
  }

  /** A measurement, a proof, or a look by itself. */
  List<Block> ask(Step.Ask step, Moment moment) {
    Check check = step.check();
    Inspection inspection = inspection(moment);
    String place = inspection.where(check) + " · ";
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.heading(
            (check.kind() == Check.Kind.PROOF ? "Proof · " : place)
                + Figures.minutes(check.minutes())
                + Wording.instrument(check).map(i -> " · " + i).orElse("")
                + " · "
                + inspection.progress()));
    blocks.add(Block.paragraph(Text.strong(check.ask())));
    List<Block.Row> rows = new ArrayList<>();
    if (!check.how().isEmpty()) {
      rows.add(Block.row("How", check.how()));
    }
    step.expectation().ifPresent(e -> rows.add(Block.row("Usual", UsualRange.reasoned(check, e))));
    words(moment).baseline(check).ifPresent(b -> rows.add(Block.row("Baseline", b)));
    words(moment).sinceBaseline(check).ifPresent(l -> rows.add(Block.row("Last", l)));
    words(moment).trend(check).ifPresent(t -> rows.add(Block.row("Trend", t)));
    rows.addAll(ForceEntry.rows(check, moment));
    blocks.add(new Block.Rows(rows));
    blocks.addAll(cautions.written(step.cautions()));
    blocks.add(answers(step, moment));
    return blocks;
  }

  private Block answers(Step.Ask step, Moment moment) {
    Check check = step.check();
    List<Block.Item> items = new ArrayList<>();
    for (Prospects.Prospect p : Prospects.of(moment.belief(), check, step.expectation())) {
      String label = check.measured() ? "·" : Integer.toString(items.size() + 1);
      String text = p.range().isEmpty() ? p.outcome().text() : p.range();
      items.add(Block.item(label, text, Inspection.verdict(check, items.size()).words()));
    }
    return new Block.Numbered(items);
  }

  /** What was made of answers that were just given; nothing more is said of what passed a look. */
  List<Block> taken(Moment after, List<String> checks) {
    List<Block> blocks = new ArrayList<>();
    Inspection inspection = inspection(after);
    for (String id : checks) {
      inspection
          .result(id)
          .filter(
              r ->
                  r.verdict() == Verdict.FAIL
                      || r.verdict() == Verdict.REMARK
                      || checks.size() == 1 && r.verdict() == Verdict.PASS)
          .ifPresent(r -> blocks.addAll(taken(after, r)));
    }
    return blocks;
  }

  private List<Block> taken(Moment after, Inspection.Result result) {
    String line =
        Wording.capital(result.verdict().words()) + ": " + words(after).line(result) + ".";
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.paragraph(Text.strong(line)));
    words(after)
        .warnings(result)
        .forEach(w -> blocks.add(Block.paragraph(Wording.capital(w) + ".")));
    if (result.isProof() && result.verdict() == Verdict.FAIL) {
      blocks.add(
          Block.signal(
              SignalWord.WARNING,
              "The gate must not run for its users until this proof passes. Keep people away from"
                  + " it. It is left out of use when the inspection ends."));
    }
    return blocks;
  }

  /** What was found, and what to do about it. */
  List<Block> findings(Moment moment) {
    Inspection inspection = inspection(moment);
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Inspection for " + inspection.kind().word()));
    blocks.add(Block.paragraph(inspection.progress() + " inspected: " + inspection.sum() + "."));
    for (Verdict verdict : List.of(Verdict.FAIL, Verdict.REMARK)) {
      List<Block.Item> items = new ArrayList<>();
      for (Inspection.Result r : inspection.results(verdict)) {
        items.add(
            Block.item(
                "·",
                r.check().ask() + " " + Wording.capital(words(moment).line(r)),
                (verdict == Verdict.FAIL ? InspectionWords.urgency(r) : "")
                    + words(moment)
                        .whatToDo(r)
                        .map(w -> (verdict == Verdict.FAIL ? "; " : "") + w)
                        .orElse("")));
      }
      if (!items.isEmpty()) {
        blocks.add(Block.paragraph(Text.strong(Wording.capital(verdict.words()))));
        blocks.add(new Block.Numbered(items));
      }
    }
    List<String> ahead = words(moment).ahead(inspection);
    if (!ahead.isEmpty()) {
      blocks.add(Block.paragraph(Text.strong(InspectionWords.AHEAD)));
      blocks.add(dotted(ahead));
    }
    blocks.addAll(notInspected(moment, inspection));
    return blocks;
  }

  /** Proofs that were not made are told with how the gate is left. */
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
                          + "."));
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

  /** Who could make what is for somebody better qualified. */
  private static Optional<Role> reserved(Moment moment, List<Inspection.Result> open) {
    return open.stream()
        .filter(r -> !mayMake(moment, r))
        .map(r -> r.check().who())
        .max(Comparator.naturalOrder());
  }
}
