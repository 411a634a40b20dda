package yett.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A drawing with coordinates in millimetres on paper. */
public final class Svg {
  private final Markup page;

  /**
   * Begins a drawing.
   *
   * @param said what it shows, for people who cannot see it
   */
  public Svg(Markup page, double width, double height, String said) {
    this.page = page;
    String size = "width:" + mm(width) + "mm;height:" + mm(height) + "mm";
    String box = "0 0 " + mm(width) + " " + mm(height);
    page.open(
        "svg",
        attributes(
            "xmlns=http://www.w3.org/2000/svg",
            "width=" + mm(width) + "mm",
            "height=" + mm(height) + "mm",
            "viewBox=" + box,
            "style=" + size,
            "role=img",
            "aria-label=" + said,
            "alt=" + said,
            "font-family=" + PdfFile.FONT + ", sans-serif"));
    page.leaf("title", said);
  }

  /** Ends the drawing. */
  public void close() {
    page.close();
  }

  /**
   * How a line is drawn.
   *
   * @param dash lengths of dash and gap; {@code none} for a solid line
   */
  public record Pen(String colour, double thick, String dash) {
    public Pen(String colour, double thick) {
      this(colour, thick, "none");
    }

    private String[] with(String... more) {
      String[] all = java.util.Arrays.copyOf(more, more.length + 3);
      all[more.length] = "stroke=" + colour;
      all[more.length + 1] = "stroke-width=" + mm(thick);
      all[more.length + 2] = "stroke-dasharray=" + dash;
      return all;
    }
  }

  public static String mm(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .setScale(3, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    draw("line", pen.with("x1=" + mm(x1), "y1=" + mm(y1), "x2=" + mm(x2), "y2=" + mm(y2)));
  }

  /**
   * Draws a line through points: x and y, alternating. The name is for people who edit the drawing.
   */
  public void path(String name, double[] points, Pen pen) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < points.length; i += 2) {
      path.append(i == 0 ? "" : " ").append(mm(points[i])).append(',').append(mm(points[i + 1]));
    }
    draw("polyline", pen.with("class=" + name, "points=" + path, "fill=none"));
  }

  public void box(
      String name, double x, double y, double width, double height, String fill, Pen pen) {
    draw(
        "rect",
        pen.with(
            "class=" + name,
            "x=" + mm(x),
            "y=" + mm(y),
            "width=" + mm(width),
            "height=" + mm(height),
            "fill=" + fill));
  }

  public void disc(double x, double y, double radius, String fill, Pen pen) {
    draw("circle", pen.with("cx=" + mm(x), "cy=" + mm(y), "r=" + mm(radius), "fill=" + fill));
  }

  /**
   * @param anchor which part of the words is at the point: {@code start}, {@code middle} or {@code
   *     end}
   */
  public void words(String words, double x, double y, double size, String anchor, String colour) {
    page.leaf(
        "text",
        words,
        attributes(
            "x=" + mm(x),
            "y=" + mm(y),
            "font-size=" + mm(size),
            "text-anchor=" + anchor,
            "fill=" + colour));
  }

  private void draw(String element, String[] attributes) {
    page.empty(element, attributes(attributes));
  }

  private static Object[] attributes(String... pairs) {
    Object[] all = new Object[2 * pairs.length];
    for (int i = 0; i < pairs.length; i++) {
      int equals = pairs[i].indexOf('=');
      all[2 * i] = pairs[i].substring(0, equals);
      all[2 * i + 1] = pairs[i].substring(equals + 1);
    }
    return all;
  }
}
