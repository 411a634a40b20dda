package yett.record.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import yett.paper.Markup;
import yett.paper.Svg.Pen;
import yett.quantity.Unit;

/** Draws the closed gate to scale, seen from inside. */
public final class Elevation {
  /** Greatest width of a drawing on paper, in millimetres. */
  static final double WIDTH = 168;

  private static final double MARGIN = 0.5;
  private static final double GROUND_CLEARANCE = 0.08;
  private static final double POST = 0.15;
  private static final double CHAIN_HEIGHT = 0.5;
  private static final double BEAM_HEIGHT = 0.55;
  private static final double ON_GROUND = 0.05;
  private static final double BELOW = 0.32;
  private static final double UNDER = 5;

  private final GateShape shape;
  private final Map<Spot, Integer> numbers;

  public Elevation(GateShape shape, Spots spots) {
    this.shape = shape;
    this.numbers = spots.numbers();
  }

  public void draw(Markup page) {
    double right = shape.tail() + MARGIN;
    double left = -GateShape.BEYOND - MARGIN;
    Scale scale = Scale.fitting(right - left, WIDTH);
    double top = GateShape.HEIGHT + 0.35;
    double ground = scale.onPaper(top);
    Canvas canvas =
        new Canvas(
            page,
            scale,
            left,
            top,
            scale.onPaper(right - left),
            ground + UNDER + scale.onPaper(BELOW + 0.04),
            "The gate from inside, closed, scale " + scale + ", with numbered places");
    ground(canvas, left, right);
    posts(canvas);
    leaf(canvas);
    operator(canvas);
    chain(canvas);
    protection(canvas);
    measures(canvas, scale);
    balloons(canvas);
    canvas.close();
  }

  private void ground(Canvas canvas, double left, double right) {
    canvas.line(left, 0, right, 0, new Pen(Canvas.INK, 0.35));
    if (!shape.cantilever()) {
      canvas.line(-0.2, 0.02, right, 0.02, new Pen(Canvas.GREY, 0.6));
    }
    if (shape.loops()) {
      canvas.line(
          0.15 * shape.opening(),
          -0.08,
          0.85 * shape.opening(),
          -0.08,
          new Pen(Canvas.BLUE, 0.5, "1.5 1"));
    }
  }

  private void posts(Canvas canvas) {
    canvas.box("post-end", -POST, -0.2, POST, GateShape.HEIGHT + 0.5, "#e4e4e4");
    canvas.box("post-operator", shape.opening(), -0.2, POST, GateShape.HEIGHT + 0.5, "#e4e4e4");
  }

  private void leaf(Canvas canvas) {
    double bottom = GROUND_CLEARANCE;
    double height = GateShape.HEIGHT - GROUND_CLEARANCE;
    canvas.box(
        "leaf",
        -GateShape.BEYOND,
        bottom,
        shape.leaf(),
        height,
        shape.boarded() ? "#ececec" : "none");
    int bars = (int) Math.round(shape.leaf() / (shape.boarded() ? 0.4 : 0.25));
    for (int i = 1; i < bars; i++) {
      double x = -GateShape.BEYOND + shape.leaf() * i / bars;
      canvas.line(x, bottom, x, bottom + height, new Pen(Canvas.GREY, 0.12));
    }
    if (shape.cantilever()) {
      roller(canvas, shape.opening() + 0.35);
      roller(canvas, shape.tail() - 0.5);
    } else {
      canvas.wheel(0.4, 0.07, 0.06);
      canvas.wheel(shape.tail() - 0.5, 0.07, 0.06);
    }
  }

  private static void roller(Canvas canvas, double x) {
    canvas.box("carriage", x - 0.15, 0, 0.3, 0.06, "#c9c9c9");
    canvas.wheel(x - 0.09, 0.09, 0.05);
    canvas.wheel(x + 0.09, 0.09, 0.05);
  }

  private void operator(Canvas canvas) {
    canvas.box("pad", shape.idler() - 0.05, -0.15, 0.5, 0.15, "#d2d2d2");
    canvas.box("operator", shape.idler(), 0, 0.4, 0.75, "#c4d3e6");
  }

  /** Draws the chain as a parabola, which a chain with little sag follows closely. */
  private void chain(Canvas canvas) {
    int steps = 40;
    double run = shape.idler() - shape.bracket();
    double[] points = new double[2 * (steps + 1)];
    for (int i = 0; i <= steps; i++) {
      double share = (double) i / steps;
      points[2 * i] = shape.bracket() + share * run;
      points[2 * i + 1] = height(share);
    }
    canvas.curve("chain", points, new Pen(Canvas.BLUE, 0.5));
    canvas.line(
        shape.bracket(),
        CHAIN_HEIGHT,
        shape.idler(),
        CHAIN_HEIGHT,
        new Pen(Canvas.BLUE, 0.12, "1 1"));
    canvas.line(
        shape.idler() + 0.4,
        CHAIN_HEIGHT,
        shape.tail() - 0.1,
        CHAIN_HEIGHT,
        new Pen(Canvas.BLUE, 0.5));
    canvas.box("bracket", shape.bracket() - 0.04, CHAIN_HEIGHT - 0.04, 0.08, 0.08, Canvas.INK);
    canvas.box("bracket-tail", shape.tail() - 0.12, CHAIN_HEIGHT - 0.04, 0.08, 0.08, Canvas.INK);
    if (shape.marker()) {
      double[] at = markerAt();
      canvas.box("marker", at[0] - 0.04, at[1] - 0.04, 0.08, 0.08, "#d9a400");
    }
  }

  /** Height of the chain; if it sags below the ground, it lies on the ground. */
  private double height(double share) {
    return Math.max(ON_GROUND, CHAIN_HEIGHT - 4 * shape.sag() * share * (1 - share));
  }

  private double[] markerAt() {
    double share = 0.8;
    return new double[] {
      shape.bracket() + share * (shape.idler() - shape.bracket()), height(share)
    };
  }

  private void protection(Canvas canvas) {
    for (int beam = 0; beam < shape.beams(); beam++) {
      double y = BEAM_HEIGHT + 0.35 + 0.35 * beam;
      canvas.line(0, y, shape.opening(), y, new Pen(Canvas.RED, 0.2, "2 1"));
      canvas.box("beam", -POST / 2 - 0.05, y - 0.06, 0.1, 0.12, Canvas.INK);
      canvas.box("beam", shape.opening() + POST / 2 - 0.05, y - 0.06, 0.1, 0.12, Canvas.INK);
    }
    if (shape.edges()) {
      canvas.box("edge", -GateShape.BEYOND - 0.05, 0.15, 0.05, GateShape.HEIGHT - 0.3, "#3a3a3a");
    }
  }

  private void measures(Canvas canvas, Scale scale) {
    double below = -BELOW;
    canvas.line(0, below, shape.opening(), below, new Pen(Canvas.INK, 0.15));
    for (double x : new double[] {0, shape.opening()}) {
      canvas.line(x, below - 0.05, x, below + 0.05, new Pen(Canvas.INK, 0.15));
    }
    canvas.words("opening " + inUnits(shape.opening()), shape.opening() / 2, below, 4, "middle");
    canvas.words("seen from inside", -GateShape.BEYOND - MARGIN, below, 4, "start");
    canvas.words("scale " + scale, shape.tail() + MARGIN - 0.05, below, 4, "end");
  }

  /** A length as the lists of the gate give it, to three figures. */
  private String inUnits(double metres) {
    Unit unit = shape.units().of(Unit.METRE);
    if (unit == Unit.METRE) {
      return metres(metres);
    }
    double value = unit.fromCanonical(Unit.METRE.toCanonical(metres));
    return new BigDecimal(value).round(new MathContext(3)).toPlainString() + " " + unit.symbol();
  }

  static String metres(double metres) {
    return BigDecimal.valueOf(Math.round(metres * 100), 2).stripTrailingZeros().toPlainString()
        + " m";
  }

  private void balloons(Canvas canvas) {
    double middle = (shape.bracket() + shape.idler()) / 2;
    double[] marker = markerAt();
    canvas.balloon(numbers.get(Spot.OPERATOR), shape.idler() + 0.2, 0.7, 5, -8);
    canvas.balloon(numbers.get(Spot.CHAIN), middle, height(0.5), 4, 4);
    canvas.balloon(numbers.get(Spot.MARKER), marker[0], marker[1], -3, -6);
    canvas.balloon(numbers.get(Spot.LEAF), 0.3 * shape.opening(), 0.1, 4, -4);
    canvas.balloon(
        numbers.get(Spot.POST), shape.opening() + POST / 2, GateShape.HEIGHT + 0.25, 6, 1);
    canvas.balloon(numbers.get(Spot.BEAM), 0.2 * shape.opening(), BEAM_HEIGHT + 0.35, 4, -5);
    canvas.balloon(numbers.get(Spot.EDGE), -GateShape.BEYOND, 1.5, 7, -3);
    canvas.balloon(numbers.get(Spot.LOOP), 0.65 * shape.opening(), -0.08, 4, 5);
    canvas.balloon(numbers.get(Spot.END), -GateShape.BEYOND, 0.3, 7, -2);
  }
}
