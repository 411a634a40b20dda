package yett.record.drawing;

import java.util.List;
import java.util.stream.DoubleStream;
import yett.calculation.Trend;
import yett.knowledge.Measures;
import yett.paper.Markup;
import yett.paper.Svg;
import yett.paper.Svg.Pen;

/** Draws the readings of a check over the years, the straight line through them, and the limit. */
public final class TrendChart {
  private static final double WIDTH = 168;
  private static final double HEIGHT = 40;
  private static final double LEFT = 24;
  private static final double RIGHT = 138;
  private static final double TOP = 4;
  private static final double BOTTOM = 32;
  private static final double SIZE = 2.9;
  private static final Pen AXIS = new Pen(Canvas.INK, 0.2);
  private static final Pen LINE = new Pen("#1b4f8a", 0.4, "3 1.2");
  private static final Pen LIMIT = new Pen("#a3221b", 0.4, "1 1");

  private final Measures measures;
  private final List<Trend.Point> points;
  private final Trend trend;
  private final double limit;
  private final double end;
  private final double low;
  private final double high;

  /**
   * @param points years since the baseline and values, oldest first
   * @param limit that the line will reach, in the canonical unit
   */
  public TrendChart(Measures measures, List<Trend.Point> points, Trend trend, double limit) {
    this.measures = measures;
    this.points = List.copyOf(points);
    this.trend = trend;
    this.limit = limit;
    this.end = trend.to() + trend.until(limit).map(Trend.Ahead::about).orElse(0.0);
    double[] all =
        DoubleStream.concat(points.stream().mapToDouble(Trend.Point::value), DoubleStream.of(limit))
            .toArray();
    double span = DoubleStream.of(all).max().orElse(1) - DoubleStream.of(all).min().orElse(0);
    this.low = DoubleStream.of(all).min().orElse(0) - 0.1 * span;
    this.high = DoubleStream.of(all).max().orElse(1) + 0.1 * span;
  }

  public void draw(Markup page) {
    Svg svg = new Svg(page, WIDTH, HEIGHT, said());
    svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, AXIS);
    svg.line(LEFT, BOTTOM, LEFT, TOP, AXIS);
    for (int year = 0; year <= end; year++) {
      svg.line(x(year), BOTTOM, x(year), BOTTOM + 1, AXIS);
      svg.words(String.valueOf(year), x(year), BOTTOM + 4.4, SIZE, "middle", Canvas.INK);
    }
    svg.words("years since", RIGHT + 4, BOTTOM + 1, SIZE, "start", Canvas.INK);
    svg.words("the baseline", RIGHT + 4, BOTTOM + 4.4, SIZE, "start", Canvas.INK);
    double first = points.get(0).value();
    svg.words(measures.showRounded(first), LEFT - 1.5, y(first) + 1, SIZE, "end", Canvas.INK);
    svg.line(LEFT, y(limit), RIGHT, y(limit), LIMIT);
    svg.words(
        measures.showRounded(limit) + ", the limit",
        RIGHT + 1.5,
        y(limit) + 1,
        SIZE,
        "start",
        LIMIT.colour());
    double from = trend.now() - trend.slope() * (trend.to() - trend.from());
    double to = trend.now() + trend.slope() * (end - trend.to());
    svg.path("trend", new double[] {x(trend.from()), y(from), x(end), y(to)}, LINE);
    points.forEach(p -> svg.disc(x(p.years()), y(p.value()), 0.9, LINE.colour(), AXIS));
    svg.close();
  }

  private String said() {
    return "Readings over the years: from "
        + measures.showRounded(points.get(0).value())
        + " to "
        + measures.showRounded(points.get(points.size() - 1).value())
        + "; the line through them goes on to "
        + measures.showRounded(limit);
  }

  private double x(double years) {
    return LEFT + (RIGHT - LEFT) * (years - trend.from()) / (end - trend.from());
  }

  private double y(double value) {
    return BOTTOM - (BOTTOM - TOP) * (value - low) / (high - low);
  }
}
