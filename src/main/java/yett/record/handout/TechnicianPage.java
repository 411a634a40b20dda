package yett.record.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import yett.interview.Chance;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Expertise;
import yett.interview.Moment;
import yett.interview.Trail;
import yett.knowledge.Letterhead;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.record.HandOverSheet;
import yett.record.drawing.Elevation;
import yett.record.drawing.GateShape;
import yett.record.drawing.Plan;
import yett.record.drawing.Spots;
import yett.record.drawing.SuspicionChart;
import yett.wording.Wording;

/** The page for whoever comes next: the hand-over with its numbers, drawings and readings. */
final class TechnicianPage {
  private static final int MOVES = 8;

  /** A move by less tells nobody anything. */
  private static final double TELLING = 0.05;

  private final Expertise expertise;
  private final RuleBase base;
  private final Letterhead letterhead;
  private final Visit visit;
  private final Moment moment;
  private final Wording words;
  private final Findings findings;

  TechnicianPage(Expertise expertise, Letterhead letterhead, Visit visit, Findings findings) {
    this.expertise = expertise;
    this.base = expertise.base();
    this.letterhead = letterhead;
    this.visit = visit;
    this.moment = visit.moment();
    this.words = new Wording(base);
    this.findings = findings;
  }

  void write(Markup page) {
    HtmlOutline lines = new HtmlOutline(page);
    new HandOverSheet(expertise).writeBriefly(lines, moment, visit.caseId(), visit.gate());
    lines.list("Parts that belong to what was done", parts());
    lines.end();
    Tables.measured(page, findings);
    ForceSection.write(page, moment);
    suspicion(page);
    drawings(page);
  }

  /** The prices are the rule base's, to plan with; a bill is another paper. */
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
    page.close();
  }

  private void suspicion(Markup page) {
    SuspicionChart chart = new SuspicionChart(moment, base);
    if (chart.isEmpty() || moment.state().told().complaints().isEmpty()) {
      return;
    }
    page.leaf("h2", "How the suspicion moved");
    page.open("div", "class", "drawing");
    chart.draw(page);
    page.close();
    List<String> moves = moves(chart.moves());
    if (!moves.isEmpty()) {
      HtmlOutline lines = new HtmlOutline(page);
      lines.paragraph("The answers that moved it most, in their order:");
      lines.items(moves);
      lines.end();
    }
  }

  /** The largest moves, in the order of the case. */
  private List<String> moves(List<Trail.Move> all) {
    return IntStream.range(0, all.size())
        .boxed()
        .filter(i -> size(all.get(i), most(all.get(i))) >= TELLING)
        .sorted(Comparator.comparingDouble(i -> -size(all.get(i), most(all.get(i)))))
        .limit(MOVES)
        .sorted()
        .map(i -> ((i + 1) + ": " + line(all.get(i))).replace(" %", "\u00a0%"))
        .toList();
  }

  private static int most(Trail.Move move) {
    return IntStream.range(0, move.before().length)
        .boxed()
        .max(Comparator.comparingDouble(i -> size(move, i)))
        .orElse(0);
  }

  private static double size(Trail.Move move, int cause) {
    return Math.abs(move.after()[cause] - move.before()[cause]);
  }

  private String line(Trail.Move move) {
    int cause = most(move);
    String id = moment.belief().model().causes().get(cause);
    return subject(move)
        + " "
        + words.cause(id)
        + ": "
        + Chance.of(move.before()[cause]).percent()
        + " to "
        + Chance.of(move.after()[cause]).percent()
        + ".";
  }

  private String subject(Trail.Move move) {
    if (move.event() == 0) {
      return "What was reported, and what happened lately.";
    }
    if (base.checks().containsKey(move.subject())) {
      return words.ask(move.subject())
          + " "
          + Wording.meaning(base.checks().get(move.subject()), move.words())
          + ".";
    }
    return base.repairs().containsKey(move.subject())
        ? "After \"" + words.repair(move.subject()) + "\":"
        : Wording.spaced(move.words()) + ".";
  }
}
