package yett.record.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import yett.paper.Markup;
import yett.paper.PdfFile;

/**
 * A drawing in SVG whose unit is the millimetre on paper. Lengths come in metres at the gate, with
 * the height upwards; those that are named millimetres are of the paper.
 */
final class Canvas {
  static final String INK = "#1a1a1a";
  static final String BLUE = "#1b4f8a";
  static final String GREY = "#6b6b6b";
  static final String RED = "#a3221b";

  private static final double THIN = 0.2;
  private static final double BALLOON = 2.4;

  private final Markup page;
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
    this.page = page;
    this.scale = scale;
    this.left = left;
    this.top = top;
    page.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        mm(widthMillimetres) + "mm",
        "height",
        mm(heightMillimetres) + "mm",
        "viewBox",
        "0 0 " + mm(widthMillimetres) + " " + mm(heightMillimetres),
        "style",
        "width:" + mm(widthMillimetres) + "mm;height:" + mm(heightMillimetres) + "mm",
        "role",
        "img",
        "aria-label",
        said,
        "alt",
        said,
        "font-family",
        PdfFile.FONT + ", sans-serif");
    page.leaf("title", said);
  }

  /** Ends the drawing. */
  void close() {
    page.close();
  }

  private static String mm(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .setScale(3, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  double x(double metres) {
    return scale.onPaper(metres - left);
  }

  double y(double metres) {
    return scale.onPaper(top - metres);
  }

  /** Lower left corner and size in metres; the name is for whoever works on the drawing. */
  void box(String name, double x, double y, double width, double height, String fill) {
    page.empty(
        "rect",
        "class",
        name,
        "x",
        mm(x(x)),
        "y",
        mm(y(y + height)),
        "width",
        mm(scale.onPaper(width)),
        "height",
        mm(scale.onPaper(height)),
        "fill",
        fill,
        "stroke",
        INK,
        "stroke-width",
        mm(THIN));
  }

  void line(double x1, double y1, double x2, double y2, String colour, double thick, String dash) {
    page.empty(
        "line",
        "x1",
        mm(x(x1)),
        "y1",
        mm(y(y1)),
        "x2",
        mm(x(x2)),
        "y2",
        mm(y(y2)),
        "stroke",
        colour,
        "stroke-width",
        mm(thick),
        "stroke-dasharray",
        dash.isEmpty() ? "none" : dash);
  }

  /** A curve through points: x and y in metres, one after the other. */
  void curve(String name, double[] points, String colour, double thick, String dash) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < points.length; i += 2) {
      path.append(i == 0 ? "" : " ")
          .append(mm(x(points[i])))
          .append(',')
          .append(mm(y(points[i + 1])));
    }
    page.empty(
        "polyline",
        "class",
        name,
        "points",
        path,
        "fill",
        "none",
        "stroke",
        colour,
        "stroke-width",
        mm(thick),
        "stroke-dasharray",
        dash.isEmpty() ? "none" : dash);
  }

  void wheel(double x, double y, double radius) {
    page.empty(
        "circle",
        "cx",
        mm(x(x)),
        "cy",
        mm(y(y)),
        "r",
        mm(scale.onPaper(radius)),
        "fill",
        "#ffffff",
        "stroke",
        INK,
        "stroke-width",
        mm(THIN));
  }

  /** Words at a point of the gate, moved on the paper. */
  void words(String words, double x, double y, double down, double size, String anchor) {
    page.leaf(
        "text",
        words,
        "x",
        mm(x(x)),
        "y",
        mm(y(y) + down),
        "font-size",
        mm(size),
        "text-anchor",
        anchor,
        "fill",
        INK);
  }

  /** The number of a place, beside the point that it means. */
  void balloon(int number, double x, double y, double right, double down) {
    double atX = x(x);
    double atY = y(y);
    page.empty(
        "line",
        "x1",
        mm(atX),
        "y1",
        mm(atY),
        "x2",
        mm(atX + right),
        "y2",
        mm(atY + down),
        "stroke",
        RED,
        "stroke-width",
        mm(THIN));
    page.empty("circle", "cx", mm(atX), "cy", mm(atY), "r", "0.5", "fill", RED);
    page.empty(
        "circle", "cx", mm(atX + right), "cy", mm(atY + down), "r", mm(BALLOON), "fill", RED);
    page.leaf(
        "text",
        String.valueOf(number),
        "x",
        mm(atX + right),
        "y",
        mm(atY + down + 1.1),
        "font-size",
        "3.2",
        "text-anchor",
        "middle",
        "fill",
        "#ffffff");
  }
}
