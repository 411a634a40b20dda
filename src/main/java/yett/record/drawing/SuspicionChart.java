package yett.record.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import yett.interview.evidence.Chance;
import yett.interview.evidence.Trail;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.paper.Svg;
import yett.paper.Svg.Pen;

/** Draws how the chances of the causes that mattered changed from answer to answer. */
public final class SuspicionChart {
  private static final double WIDTH = 168;
  private static final double HEIGHT = 48;
  private static final double LEFT = 24;
  private static final double RIGHT = 98;
  private static final double TOP = 4;
  private static final double BOTTOM = 38;
  private static final double LINE = 4;
  private static final double SIZE = 2.9;
  private static final int LINES = 4;
  private static final int MOST_TICKS = 8;
  private static final int LONGEST = 44;

  /** A cause that never reached this chance is not drawn. */
  private static final double MATTERS = 0.1;

  /** Chances at which the word for them is written. */
  private static final List<Double> LEVELS = List.of(0.2, 0.5, 0.8, 0.98);

  /** Colours that can be told apart in print without colour as well. */
  private static final List<String> COLOURS = List.of("#1b4f8a", "#a3221b", "#2b6b3a", "#6a2c7a");

  private static final List<String> DASHES = List.of("none", "3 1.2", "1 1", "5 1 1 1");

  private final List<String> names;
  private final List<double[]> points;

  /** The moves between the points: the first leads to the second point, and so on. */
  private final List<Trail.Move> moves;

  public SuspicionChart(Moment moment, RuleBase base) {
    this.moves = together(moment.trail().moves());
    this.points = new ArrayList<>();
    points.add(moment.trail().prior());
    moves.forEach(m -> points.add(m.after()));
    this.names =
        moment.belief().model().causes().stream()
            .map(id -> base.causes().containsKey(id) ? base.causes().get(id).name() : id)
            .toList();
  }

  /** Combines into one move the steps that came from one answer, and all that was reported. */
  private static List<Trail.Move> together(List<Trail.Move> all) {
    List<Trail.Move> moves = new ArrayList<>();
    for (Trail.Move move : all) {
      int last = moves.size() - 1;
      if (last >= 0 && moves.get(last).event() == move.event()) {
        Trail.Move before = moves.get(last);
        moves.set(
            last,
            new Trail.Move(
                before.event(),
                before.subject(),
                before.words(),
                before.also(),
                before.reason(),
                before.source(),
                before.before(),
                move.after()));
      } else {
        moves.add(move);
      }
    }
    return List.copyOf(moves);
  }

  /** The moves in the order of the chart; the first one is at 1. */
  public List<Trail.Move> moves() {
    return moves;
  }

  /** Whether nothing moved. */
  public boolean isEmpty() {
    return points.size() < 2;
  }

  /** The causes that led at some moment; the one that leads at the end comes first. */
  private List<Integer> causes() {
    double[] last = points.get(points.size() - 1);
    return IntStream.range(0, names.size())
        .boxed()
        .filter(i -> peak(i) >= MATTERS)
        .sorted(Comparator.comparingDouble(i -> -peak(i)))
        .limit(LINES)
        .sorted(Comparator.comparingDouble(i -> -last[i]))
        .toList();
  }

  private double peak(int cause) {
    return points.stream().mapToDouble(p -> p[cause]).max().orElse(0);
  }

  public void draw(Markup page) {
    Svg svg = new Svg(page, WIDTH, HEIGHT, said());
    levels(svg);
    List<Integer> causes = causes();
    double[] labels = labels(causes);
    for (int i = 0; i < causes.size(); i++) {
      cause(svg, causes.get(i), labels[i], new Pen(COLOURS.get(i), 0.6, DASHES.get(i)));
    }
    ticks(svg);
    svg.close();
  }

  private String said() {
    double[] last = points.get(points.size() - 1);
    StringBuilder words = new StringBuilder("How the suspicion moved from answer to answer");
    for (int cause : causes()) {
      words
          .append("; ")
          .append(names.get(cause))
          .append(": from ")
          .append(Chance.of(points.get(0)[cause]).percent())
          .append(" to ")
          .append(Chance.of(last[cause]).percent());
    }
    return words.toString();
  }

  /**
   * Writes the words for chances at their heights, so that the lines can be read without figures.
   */
  private static void levels(Svg svg) {
    level(svg, 0, "hardly");
    LEVELS.forEach(chance -> level(svg, chance, Chance.of(chance).words()));
  }

  private static void level(Svg svg, double chance, String word) {
    svg.line(LEFT, y(chance), RIGHT, y(chance), new Pen("#bdbdbd", 0.15));
    svg.words(word, LEFT - 1.5, y(chance) + 1, SIZE, "end", Canvas.INK);
  }

  private void ticks(Svg svg) {
    int step = Math.max(1, (points.size() - 1) / MOST_TICKS);
    for (int i = 0; i < points.size(); i += step) {
      svg.line(x(i), BOTTOM, x(i), BOTTOM + 1, new Pen(Canvas.INK, 0.2));
      svg.words(String.valueOf(i), x(i), BOTTOM + 4.2, SIZE, "middle", Canvas.INK);
    }
    double middle = (LEFT + RIGHT) / 2;
    svg.words("answers, in their order", middle, BOTTOM + 8.5, SIZE, "middle", Canvas.INK);
  }

  private void cause(Svg svg, int cause, double label, Pen pen) {
    double[] path = new double[2 * points.size()];
    for (int i = 0; i < points.size(); i++) {
      path[2 * i] = x(i);
      path[2 * i + 1] = y(points.get(i)[cause]);
    }
    svg.path("suspicion", path, pen);
    double end = path[path.length - 1];
    svg.line(RIGHT, end, RIGHT + 3, label - 1, new Pen(pen.colour(), 0.2));
    String name = names.get(cause);
    String shown = name.length() > LONGEST ? name.substring(0, LONGEST - 1) + "…" : name;
    svg.words(shown, RIGHT + 4, label, SIZE, "start", pen.colour());
  }

  /** Heights of the labels, in the order of the ends of their lines and without overlap. */
  private double[] labels(List<Integer> causes) {
    double[] last = points.get(points.size() - 1);
    double[] labels = new double[causes.size()];
    for (int i = 0; i < labels.length; i++) {
      double wanted = y(last[causes.get(i)]) + 1;
      labels[i] = i == 0 ? wanted : Math.max(wanted, labels[i - 1] + LINE);
    }
    for (int i = labels.length - 1; i >= 0; i--) {
      double lowest = BOTTOM + 1 - LINE * (labels.length - 1 - i);
      labels[i] = Math.min(labels[i], lowest);
    }
    return labels;
  }

  private double x(int answer) {
    return LEFT + (RIGHT - LEFT) * answer / (points.size() - 1);
  }

  private static double y(double chance) {
    return BOTTOM - (BOTTOM - TOP) * chance;
  }
}
