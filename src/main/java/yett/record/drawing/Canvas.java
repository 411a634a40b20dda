package yett.record.drawing;

import yett.paper.Markup;
import yett.paper.Svg;
import yett.paper.Svg.Pen;

/**
 * Draws a gate to scale. Lengths are in metres at the gate, upwards positive; parameters named
 * millimetres are lengths on paper.
 */
final class Canvas {
  static final String INK = "#1a1a1a";
  static final String BLUE = "#1b4f8a";
  static final String GREY = "#6b6b6b";
  static final String RED = "#a3221b";
  static final String WHITE = "#ffffff";

  private static final Pen OUTLINE = new Pen(INK, 0.2);
  private static final Pen POINTER = new Pen(RED, 0.2);
  private static final double BALLOON = 2.4;

  private final Svg svg;
  private final Scale scale;
  private final double left;
  private final double top;

  /**
   * Begins a drawing.
   *
   * @param left position of its left edge in metres
   * @param top position of its upper edge in metres
   * @param said what it shows, for people who cannot see it
   */
  Canvas(
      Markup page,
      Scale scale,
      double left,
      double top,
      double widthMillimetres,
      double heightMillimetres,
      String said) {
    this.svg = new Svg(page, widthMillimetres, heightMillimetres, said);
    this.scale = scale;
    this.left = left;
    this.top = top;
  }

  /** Ends the drawing. */
  void close() {
    svg.close();
  }

  private double x(double metres) {
    return scale.onPaper(metres - left);
  }

  private double y(double metres) {
    return scale.onPaper(top - metres);
  }

  /**
   * Draws a rectangle from its lower left corner and its size in metres. The name is for people who
   * edit the drawing.
   */
  void box(String name, double x, double y, double width, double height, String fill) {
    svg.box(name, x(x), y(y + height), scale.onPaper(width), scale.onPaper(height), fill, OUTLINE);
  }

  void line(double x1, double y1, double x2, double y2, Pen pen) {
    svg.line(x(x1), y(y1), x(x2), y(y2), pen);
  }

  /** Draws a curve through points: x and y in metres, alternating. */
  void curve(String name, double[] points, Pen pen) {
    double[] drawn = new double[points.length];
    for (int i = 0; i < points.length; i += 2) {
      drawn[i] = x(points[i]);
      drawn[i + 1] = y(points[i + 1]);
    }
    svg.path(name, drawn, pen);
  }

  void wheel(double x, double y, double radius) {
    svg.disc(x(x), y(y), scale.onPaper(radius), WHITE, OUTLINE);
  }

  /** Writes words at a point of the gate, moved down by a distance on the paper. */
  void words(String words, double x, double y, double downMillimetres, String anchor) {
    svg.words(words, x(x), y(y) + downMillimetres, 3, anchor, INK);
  }

  /** Writes the number of a place, if it has one, some millimetres beside the point. */
  void balloon(Integer number, double x, double y, double right, double down) {
    if (number == null) {
      return;
    }
    double atX = x(x);
    double atY = y(y);
    svg.line(atX, atY, atX + right, atY + down, POINTER);
    svg.disc(atX, atY, 0.5, RED, POINTER);
    svg.disc(atX + right, atY + down, BALLOON, RED, POINTER);
    svg.words(String.valueOf(number), atX + right, atY + down + 1.1, 3.2, "middle", WHITE);
  }
}
