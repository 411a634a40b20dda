package yett.record.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yett.interview.course.Expertise;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Letterhead;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.record.HandOverSheet;
import yett.record.drawing.Elevation;
import yett.record.drawing.GateShape;
import yett.record.drawing.Plan;
import yett.record.drawing.Spots;

/**
 * Writes the page for the next technician: the hand-over with its numbers, drawings and readings.
 */
final class TechnicianPage {
  private final Expertise expertise;
  private final RuleBase base;
  private final Letterhead letterhead;
  private final Visit visit;
  private final Moment moment;
  private final Findings findings;

  TechnicianPage(Expertise expertise, Letterhead letterhead, Visit visit, Findings findings) {
    this.expertise = expertise;
    this.base = expertise.base();
    this.letterhead = letterhead;
    this.visit = visit;
    this.moment = visit.moment();
    this.findings = findings;
  }

  void write(Markup page) {
    HtmlOutline lines = new HtmlOutline(page);
    new HandOverSheet(expertise).writeBriefly(lines, moment, visit.caseId(), visit.gate());
    lines.list("Parts for what was done, if it took any", parts());
    lines.end();
    Tables.measured(page, findings);
    ForceSection.write(page, moment);
    new SuspicionSection(base, moment).write(page);
    drawings(page);
  }

  /** The parts with prices from the rule base, for planning. They are not a bill. */
  private List<String> parts() {
    List<String> lines = new ArrayList<>();
    for (Entry deed : moment.state().work().deeds()) {
      if (deed.event() instanceof Event.Repaired repaired
          && base.repairs().containsKey(repaired.repair())) {
        for (Repair.Part part : base.repairs().get(repaired.repair()).parts()) {
          lines.add(
              part.part()
                  + letterhead
                      .currency()
                      .map(c -> String.format(Locale.ROOT, ", about %.2f %s", part.price(), c))
                      .orElse(""));
        }
      }
    }
    return lines;
  }

  private void drawings(Markup page) {
    GateShape shape = findings.shape();
    Spots spots = findings.spots();
    page.open("div", "class", "together"); // one numbering and one legend for both
    page.leaf("h2", "Where it was");
    page.open("div", "class", "drawing");
    new Elevation(shape, spots).draw(page);
    page.close();
    page.open("div", "class", "drawing");
    new Plan(shape, spots).draw(page);
    page.leaf(
        "p",
        (spots.numbers().isEmpty() ? "" : spots.legend() + ". ")
            + "Not measured, drawn as is usual: "
            + String.join("; ", shape.assumed())
            + "; where operator, beams, loops and marker stand.",
        "class",
        "note");
    page.close().close();
  }
}
