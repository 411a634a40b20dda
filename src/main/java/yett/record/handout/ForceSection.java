package yett.record.handout;

import java.util.List;
import yett.calculation.ObstructionForce.Verdict;
import yett.interview.moment.Moment;
import yett.interview.state.Forces;
import yett.paper.Markup;
import yett.record.drawing.ForceChart;
import yett.wording.ForceWords;

/**
 * Writes the measured forces on an obstruction with their limits; nothing if none were measured.
 */
final class ForceSection {
  private ForceSection() {}

  static void write(Markup page, Moment moment) {
    Forces forces = Forces.of(moment.entries());
    if (forces.isEmpty()) {
      return;
    }
    page.leaf("h2", "Force on an obstruction (EN 12453)");
    page.open("table").open("thead").open("tr");
    for (String head :
        List.of("Way", "Gap and height", "Peak", "Allowed", "Above 150 N", "Allowed", "Verdict")) {
      page.leaf("th", head, "scope", "col");
    }
    page.close().close().open("tbody");
    forces.before().forEach(p -> row(page, p, " before the repair"));
    forces.points().forEach(p -> row(page, p, ""));
    page.close().close();
    ForceWords.gaps(forces).forEach(gap -> page.leaf("p", gap + ".", "class", "note"));
    forces.points().stream()
        .flatMap(p -> p.force().left().stream())
        .max(Double::compare)
        .ifPresent(
            left ->
                page.leaf(
                    "p",
                    "At most " + ForceWords.left(left) + ", where that was read.",
                    "class",
                    "note"));
    forces
        .worstCurve()
        .ifPresent(
            worst -> {
              page.open("div", "class", "drawing");
              new ForceChart(worst).draw(page);
              page.leaf(
                  "p",
                  "The record with the greatest force: gap "
                      + worst.gap()
                      + " mm, "
                      + worst.height().words()
                      + ".",
                  "class",
                  "note");
              page.close();
            });
  }

  private static void row(Markup page, Forces.Point p, String when) {
    page.open("tr");
    page.leaf("td", ForceWords.way(p.proof()) + when);
    page.leaf("td", ForceWords.place(p));
    page.leaf("td", ForceWords.peak(p.force()));
    page.leaf("td", ForceWords.allowed(p.force()));
    page.leaf("td", ForceWords.above(p.force()));
    page.leaf("td", ForceWords.aboveAllowed());
    Verdict verdict = p.force().verdict();
    page.leaf(
        "td",
        ForceWords.judged(p.force()),
        "class",
        verdict == Verdict.MET ? "short good" : verdict == Verdict.MISSED ? "short bad" : "short");
    page.close();
  }
}
