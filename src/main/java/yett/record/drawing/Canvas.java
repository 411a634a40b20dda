package yett.record.drawing;

import yett.paper.Markup;
import yett.paper.Svg;
import yett.paper.Svg.Pen;

/**
 * A drawing of a gate to scale. Lengths come in metres at the gate, with the height upwards; those
 * that are named millimetres are of the paper.
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
   * @param left metres that stand at its left edge
   * @param top metres that stand at its upper edge
   * @param said what it shows, for whoever does not see it
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

  /** Lower left corner and size in metres; the name is for whoever works on the drawing. */
  void box(String name, double x, double y, double width, double height, String fill) {
    svg.box(name, x(x), y(y + height), scale.onPaper(width), scale.onPaper(height), fill, OUTLINE);
  }

  void line(double x1, double y1, double x2, double y2, Pen pen) {
    svg.line(x(x1), y(y1), x(x2), y(y2), pen);
  }

  /** A curve through points: x and y in metres, one after the other. */
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

  /** Words at a point of the gate, moved down on the paper. */
  void words(String words, double x, double y, double downMillimetres, String anchor) {
    svg.words(words, x(x), y(y) + downMillimetres, 3, anchor, INK);
  }

  /** The number of a place, if it has one, some millimetres beside the point that it means. */
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
