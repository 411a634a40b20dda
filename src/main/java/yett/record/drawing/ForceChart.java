package yett.record.drawing;

import java.util.Arrays;
import java.util.List;
import yett.calculation.ForceZone;
import yett.calculation.ObstructionForce;
import yett.interview.event.Event;
import yett.paper.Markup;
import yett.paper.Svg;
import yett.paper.Svg.Pen;

/** Draws a recorded force with the limits of its gap: time from contact in s, force in N. */
public final class ForceChart {
  private static final double WIDTH = 168;
  private static final double HEIGHT = 52;
  private static final double LEFT = 24;
  private static final double RIGHT = 138;
  private static final double TOP = 4;
  private static final double BOTTOM = 40;
  private static final double SIZE = 2.9;
  private static final double BEFORE = 0.2;
  private static final Pen AXIS = new Pen(Canvas.INK, 0.2);
  private static final Pen CURVE = new Pen("#1b4f8a", 0.6);
  private static final Pen LIMIT = new Pen("#a3221b", 0.4, "3 1.2");

  private final Event.ForceTaken taken;
  private final double limit;
  private final double longest;
  private final double most;

  public ForceChart(Event.ForceTaken taken) {
    this.taken = taken;
    this.limit = ForceZone.CLOSING_GAP.peakLimit();
    List<Double> curve = taken.curve();
    double end = curve.get(curve.size() - 2);
    this.longest = Math.max(1, Math.min(ObstructionForce.RELEASE_PERIOD, end));
    this.most = 1.1 * Math.max(limit, taken.peak());
  }

  public void draw(Markup page) {
    Svg svg = new Svg(page, WIDTH, HEIGHT, said());
    svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, AXIS);
    svg.line(LEFT, BOTTOM, LEFT, TOP, AXIS);
    for (int second = 0; second <= longest; second++) {
      svg.line(x(second), BOTTOM, x(second), BOTTOM + 1, AXIS);
      svg.words(second + " s", x(second), BOTTOM + 4.4, SIZE, "middle", Canvas.INK);
    }
    svg.words("time from contact", (LEFT + RIGHT) / 2, BOTTOM + 9, SIZE, "middle", Canvas.INK);
    svg.words("0 N", LEFT - 1.5, BOTTOM + 1, SIZE, "end", Canvas.INK);
    svg.words(
        Math.round(taken.peak()) + " N",
        LEFT - 1.5,
        y(taken.peak()) + 1,
        SIZE,
        "end",
        CURVE.colour());
    limits(svg);
    svg.path("force", shown(), CURVE);
    svg.close();
  }

  /** The recorded points up to the end of the time axis, where a longer record is cut through. */
  private double[] shown() {
    List<Double> curve = taken.curve();
    double[] points = new double[curve.size()];
    int used = 0;
    for (int i = 0; i + 1 < points.length; i += 2) {
      boolean past = curve.get(i) > longest;
      double before = past && i > 0 ? curve.get(i - 2) : curve.get(i);
      double share = past ? (longest - before) / (curve.get(i) - before) : 1;
      double force =
          past && i > 0
              ? curve.get(i - 1) + share * (curve.get(i + 1) - curve.get(i - 1))
              : curve.get(i + 1);
      points[used++] = x(past ? longest : curve.get(i));
      points[used++] = y(Math.max(0, force));
      if (past) {
        break;
      }
    }
    return Arrays.copyOf(points, used);
  }

  private void limits(Svg svg) {
    double period = ObstructionForce.DYNAMIC_PERIOD;
    double later = ObstructionForce.STATIC_LIMIT;
    svg.path(
        "limit",
        new double[] {
          x(-BEFORE), y(limit), x(period), y(limit), x(period), y(later), RIGHT, y(later)
        },
        LIMIT);
    svg.words(
        Math.round(limit) + " N allowed",
        x(period) + 1.5,
        y(limit) + 1,
        SIZE,
        "start",
        LIMIT.colour());
    svg.words("150 N after 0.75 s", RIGHT + 1.5, y(later) + 1, SIZE, "start", LIMIT.colour());
  }

  private String said() {
    return "Force on the meter over time: at most "
        + Math.round(taken.peak())
        + " N, "
        + Math.round(limit)
        + " N allowed; above 150 N for "
        + Math.round(1000 * taken.above())
        + " ms, 750 ms allowed";
  }

  private double x(double seconds) {
    return LEFT + (RIGHT - LEFT) * (seconds + BEFORE) / (longest + BEFORE);
  }

  private double y(double newtons) {
    return BOTTOM - (BOTTOM - TOP) * newtons / most;
  }
}
