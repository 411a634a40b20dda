package yett.record.drawing;

import java.util.Map;
import yett.paper.Markup;
import yett.paper.Svg.Pen;

/** Draws the closed gate from above, to scale along the leaf and across it; the inside is below. */
public final class Plan {
  private static final double MARGIN = 0.5;
  private static final double POST = 0.15;
  private static final double THICK = 0.06;
  private static final double BEAM_OFF = 0.2;
  private static final double LOOP_NEAR = 0.6;
  private static final double LOOP_FAR = 1.2;

  private final GateShape shape;
  private final Map<Spot, Integer> numbers;

  public Plan(GateShape shape, Spots spots) {
    this.shape = shape;
    this.numbers = spots.numbers();
  }

  public void draw(Markup page) {
    double right = shape.tail() + MARGIN;
    double left = -GateShape.BEYOND - MARGIN;
    Scale scale = Scale.fitting(right - left, Elevation.WIDTH);
    double half = shape.loops() ? LOOP_FAR + 0.2 : 0.8;
    Canvas canvas =
        new Canvas(
            page,
            scale,
            left,
            half,
            scale.onPaper(right - left),
            scale.onPaper(2 * half) + 6,
            "The gate from above, closed, scale " + scale + ", with numbered places");
    if (shape.loops()) {
      loop(canvas, LOOP_NEAR);
      loop(canvas, -LOOP_FAR);
    }
    canvas.line(0, -half, 0, half, new Pen(Canvas.GREY, 0.15, "3 1.5"));
    canvas.line(shape.opening(), -half, shape.opening(), half, new Pen(Canvas.GREY, 0.15, "3 1.5"));
    canvas.box("post-end", -POST, -POST / 2 + THICK, POST, POST, "#e4e4e4");
    canvas.box("post-operator", shape.opening(), THICK / 2 + 0.03, POST, POST, "#e4e4e4");
    canvas.box(
        "leaf-plan",
        -GateShape.BEYOND,
        -THICK / 2,
        shape.leaf(),
        THICK,
        shape.boarded() ? "#ececec" : "#ffffff");
    chain(canvas);
    canvas.box("operator-plan", shape.idler(), -0.45, 0.4, 0.3, "#c4d3e6");
    protection(canvas);
    canvas.words("outside", 0.1, half, 3.5, "start");
    canvas.words("inside", 0.1, -half, -1, "start");
    canvas.words("scale " + scale, right - 0.05, -half, 4, "end");
    balloons(canvas);
    canvas.close();
  }

  private void loop(Canvas canvas, double from) {
    double width = 0.7 * shape.opening();
    canvas.box("loop", 0.15 * shape.opening(), from, width, LOOP_FAR - LOOP_NEAR, "none");
  }

  private void chain(Canvas canvas) {
    double y = -0.12;
    canvas.line(shape.bracket(), y, shape.tail() - 0.1, y, new Pen(Canvas.BLUE, 0.5));
    canvas.box("bracket", shape.bracket() - 0.03, y, 0.06, 0.12, Canvas.INK);
    canvas.box("bracket", shape.tail() - 0.12, y, 0.06, 0.12, Canvas.INK);
    if (shape.marker()) {
      canvas.box("marker", markerX() - 0.04, y - 0.04, 0.08, 0.08, "#d9a400");
    }
  }

  private double markerX() {
    return shape.bracket() + 0.8 * (shape.idler() - shape.bracket());
  }

  private void protection(Canvas canvas) {
    for (int beam = 0; beam < shape.beams(); beam++) {
      double y = beam == 0 ? -BEAM_OFF - 0.1 : BEAM_OFF;
      canvas.line(0, y, shape.opening(), y, new Pen(Canvas.RED, 0.2, "2 1"));
    }
    if (shape.edges()) {
      canvas.box("edge", -GateShape.BEYOND - 0.05, -THICK / 2, 0.05, THICK, "#3a3a3a");
    }
  }

  private void balloons(Canvas canvas) {
    canvas.balloon(numbers.get(Spot.OPERATOR), shape.idler() + 0.2, -0.3, 6, 6);
    canvas.balloon(numbers.get(Spot.CHAIN), 0.5 * shape.opening(), -0.12, 3, 6);
    canvas.balloon(numbers.get(Spot.MARKER), markerX(), -0.12, 3, 6);
    canvas.balloon(numbers.get(Spot.LEAF), 0.35 * shape.opening(), 0.03, 3, -5);
    canvas.balloon(numbers.get(Spot.POST), shape.opening() + POST / 2, 0.15, 5, -4);
    canvas.balloon(numbers.get(Spot.BEAM), 0.2 * shape.opening(), -BEAM_OFF - 0.1, -3, 5);
    canvas.balloon(numbers.get(Spot.EDGE), -GateShape.BEYOND, 0, -4, -5);
    canvas.balloon(numbers.get(Spot.LOOP), 0.5 * shape.opening(), LOOP_NEAR, 4, -5);
    canvas.balloon(numbers.get(Spot.END), -GateShape.BEYOND, 0, -4, 6);
  }
}
