package yett.record.handout;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import yett.interview.evidence.Chance;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.record.drawing.SuspicionChart;
import yett.wording.Wording;

/**
 * Shows how the suspicion changed from answer to answer: a drawing, and the most telling moves in
 * words.
 */
final class SuspicionSection {
  private static final int MOVES = 8;

  /** Smaller moves are not mentioned. */
  private static final double TELLING = 0.05;

  private final RuleBase base;
  private final Moment moment;
  private final Wording words;

  SuspicionSection(RuleBase base, Moment moment) {
    this.base = base;
    this.moment = moment;
    this.words = new Wording(base);
  }

  void write(Markup page) {
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
          + Wording.meaning(base.checks().get(move.subject()), move.words(), move.also())
          + ".";
    }
    return base.repairs().containsKey(move.subject())
        ? "After \"" + words.repair(move.subject()) + "\":"
        : Wording.spaced(move.words()) + ".";
  }
}
