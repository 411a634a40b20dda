package yett.record.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.calculation.Trend;
import yett.interview.event.Ending;
import yett.interview.inspection.Inspection;
import yett.interview.inspection.Inspection.Result;
import yett.interview.inspection.Verdict;
import yett.interview.moment.Moment;
import yett.interview.site.Trends;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.record.InspectionSheet;
import yett.record.drawing.TrendChart;
import yett.wording.InspectionWords;
import yett.wording.TrendWords;
import yett.wording.UsualRangeWords;

/** Writes the sheet of an inspection, to be signed: the same for customer and technician. */
final class InspectionPage {
  private static final int MOST_DRAWN = 3;

  private final RuleBase base;
  private final LetterheadLines head;
  private final Visit visit;
  private final Moment moment;
  private final Inspection inspection;
  private final InspectionWords words;

  InspectionPage(RuleBase base, LetterheadLines head, Visit visit) {
    this.base = base;
    this.head = head;
    this.visit = visit;
    this.moment = visit.moment();
    this.inspection = Inspection.of(base, moment).orElseThrow();
    this.words = new InspectionWords(base, moment, visit.zone());
  }

  void write(Markup page) {
    head.write(page);
    page.leaf("h1", "Inspection for " + inspection.kind().word());
    visit.facts(page, base);
    boolean passed = moment.state().closed().equals(Optional.of(Ending.INSPECTED));
    page.leaf(
        "p",
        "The gate: " + InspectionSheet.result(moment) + ".",
        "class",
        passed ? "state" : "state stop");
    page.leaf("p", inspection.progress() + " inspected; " + inspection.sum() + ".");
    found(page, "Failed", Verdict.FAIL);
    found(page, "Remarks", Verdict.REMARK);
    lines(page, InspectionWords.AHEAD, words.ahead(inspection));
    trends(page);
    measured(page);
    proofs(page);
    ForceSection.write(page, moment);
    List<String> open = words.notInspected(inspection);
    if (!open.isEmpty()) {
      lines(page, "Looked at, in order", words.passedLooks(inspection));
    }
    page.open("div", "class", "together"); // the signatures must not be alone on a page
    if (open.isEmpty()) {
      lines(page, "Looked at, in order", words.passedLooks(inspection));
    }
    lines(page, "Not inspected", open);
    Signatures.write(page);
    page.close();
  }

  private static void lines(Markup page, String heading, List<String> all) {
    HtmlOutline lines = new HtmlOutline(page);
    lines.list(heading, all);
    lines.end();
  }

  private void found(Markup page, String heading, Verdict verdict) {
    lines(page, heading, inspection.results(verdict).stream().map(words::toSeeTo).toList());
  }

  /** Draws at most three trends that move towards a limit; the others are given in words. */
  private void trends(Markup page) {
    Trends trends = Trends.of(base, moment);
    TrendWords said = new TrendWords(trends, moment.judgement());
    inspection.measured().stream()
        .map(Result::check)
        .filter(c -> said.warning(c).isPresent())
        .limit(MOST_DRAWN)
        .forEach(
            c -> {
              Trend trend = trends.of(c).orElseThrow();
              page.open("div", "class", "drawing");
              page.leaf("p", c.name(), "class", "note");
              new TrendChart(
                      c.measures().orElseThrow(),
                      trends.points(c),
                      trend,
                      said.limit(c, trend).orElseThrow())
                  .draw(page);
              page.close();
            });
  }

  private void measured(Markup page) {
    List<Result> measured = inspection.measured();
    if (measured.isEmpty()) {
      return;
    }
    page.leaf("h2", "Measured");
    page.open("table").open("thead").open("tr");
    boolean compared = measured.stream().anyMatch(r -> words.baseline(r.check()).isPresent());
    List<String> heads = new ArrayList<>(List.of("Measured", "Reading", "Usual here"));
    if (compared) { // a gate that was just mounted has none
      heads.add("Baseline");
    }
    heads.add("Verdict");
    for (String head : heads) {
      page.leaf("th", head, "scope", "col");
    }
    page.close().close().open("tbody");
    for (Result r : measured) {
      page.open("tr");
      page.leaf("td", r.check().name());
      page.leaf("td", words.found(r));
      page.leaf("td", UsualRangeWords.of(moment, r.check()).orElse("none known"));
      if (compared) {
        page.leaf("td", words.baseline(r.check()).orElse(""));
      }
      verdict(page, r);
      page.close();
    }
    page.close().close();
  }

  private void proofs(Markup page) {
    page.leaf("h2", "Safety tests");
    page.open("table").open("tbody");
    List<Result> proofs = inspection.proofs();
    for (int i = 0; i < proofs.size(); i += 2) {
      page.open("tr");
      for (Result r : proofs.subList(i, Math.min(i + 2, proofs.size()))) {
        page.leaf("td", r.check().name());
        verdict(page, r);
      }
      page.close();
    }
    page.close().close();
  }

  private static void verdict(Markup page, Result result) {
    String tone =
        switch (result.verdict()) {
          case PASS -> "short good";
          case REMARK -> "short";
          case FAIL, OPEN -> "short bad";
        };
    page.leaf("td", result.verdict().words(), "class", tone);
  }
}
