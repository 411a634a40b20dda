package yett.command.diagnose.screen;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import yett.console.Block;
import yett.console.SignalWord;
import yett.console.Text;
import yett.interview.evidence.Prospects;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Verdict;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.Figures;
import yett.wording.InspectionWords;
import yett.wording.Wording;

/** The screens of an inspection: what is asked at one place, and the verdict on the answers. */
public record InspectionViews(RuleBase base, CautionViews cautions) {
  Inspection inspection(Moment moment) {
    return Inspection.of(base, moment).orElseThrow();
  }

  InspectionWords words(Moment moment) {
    return new InspectionWords(base, moment, ZoneId.systemDefault());
  }

  /** Shows a measurement, a proof, or a single look. */
  public List<Block> ask(Step.Ask step, Moment moment) {
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
    List<Block.Row> rows = CheckViews.howAndUsual(step);
    words(moment).baseline(check).ifPresent(b -> rows.add(Block.row("Baseline", b)));
    words(moment).sinceBaseline(check).ifPresent(l -> rows.add(Block.row("Last", l)));
    words(moment).trend(check).ifPresent(t -> rows.add(Block.row("Trend", t)));
    rows.addAll(ForceViews.rows(check, moment));
    blocks.add(new Block.Rows(rows));
    blocks.addAll(cautions.written(step.cautions()));
    List<Inspection.Result> missing = inspection.notBeforeRun(check);
    if (!missing.isEmpty()) {
      blocks.add(
          Block.signal(
              SignalWord.WARNING,
              "Not measured yet, because only an electrician may: "
                  + String.join("; ", missing.stream().map(r -> r.check().name()).toList())
                  + ". Have it done before this gate is run for the first time: save, then resume with --as electrician."));
    }
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

  /** The verdicts on answers that were just given. Looks that passed are not mentioned. */
  public List<Block> taken(Moment after, List<String> checks) {
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
}
