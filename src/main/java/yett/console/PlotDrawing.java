package yett.console;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Draws a {@link Block.Plot} with plain characters, so that it looks the same in a window, in a
 * pipe and on paper. Each column reaches from the least to the greatest value of its part of the
 * curve, so that no peak is lost between two columns.
 */
final class PlotDrawing {
  private static final int ROWS = 15;
  private static final int TICKS = 5;
  private static final char CURVE = '*';
  private static final char LEVEL = '-';

  private final Block.Plot plot;
  private final UnaryOperator<String> safe;
  private final int gutter;
  private final int columns;
  private final double left;
  private final double right;
  private final double bottom;
  private final double top;

  /**
   * @param width columns of a line
   * @param safe makes a label safe to show
   */
  PlotDrawing(Block.Plot plot, int width, UnaryOperator<String> safe) {
    this.plot = plot;
    this.safe = safe;
    left = plot.points().get(0).across();
    right = plot.points().get(plot.points().size() - 1).across();
    double least = plot.points().stream().mapToDouble(Block.Point::up).min().orElse(0);
    double greatest = plot.points().stream().mapToDouble(Block.Point::up).max().orElse(0);
    bottom = Math.min(0, least);
    double highest =
        Math.max(greatest, plot.levels().stream().mapToDouble(Block.Level::up).max().orElse(0));
    top = highest > bottom ? highest : bottom + 1;
    gutter =
        plot.levels().stream()
            .map(level -> safe.apply(level.label()))
            .mapToInt(Wrapping::columns)
            .max()
            .orElse(0);
    columns = width - Math.max(1, gutter) - 2;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(safe.apply(plot.up()));
    char[][] grid = new char[ROWS][columns];
    for (char[] row : grid) {
      Arrays.fill(row, ' ');
    }
    String[] labels = drawLevels(grid);
    drawCurve(grid);
    for (int row = 0; row < ROWS; row++) {
      String label = labels[row] == null ? "" : labels[row];
      String pad = " ".repeat(Math.max(1, gutter) - Wrapping.columns(label));
      lines.add((pad + label + " |" + new String(grid[row])).stripTrailing());
    }
    lines.addAll(axis());
    return lines;
  }

  private String[] drawLevels(char[][] grid) {
    String[] labels = new String[ROWS];
    for (Block.Level level : plot.levels()) {
      int row = row(level.up());
      if (labels[row] == null) {
        labels[row] = safe.apply(level.label());
      }
      Arrays.fill(grid[row], LEVEL);
    }
    return labels;
  }

  private void drawCurve(char[][] grid) {
    List<Block.Point> points = plot.points();
    int next = 0;
    double before = points.get(0).up();
    for (int column = 0; column < columns; column++) {
      double edge = left + (right - left) * (column + 1) / columns;
      double low = before;
      double high = before;
      while (next < points.size() && points.get(next).across() <= edge) {
        low = Math.min(low, points.get(next).up());
        high = Math.max(high, points.get(next).up());
        next++;
      }
      before = next == points.size() ? points.get(next - 1).up() : between(next, edge);
      low = Math.min(low, before);
      high = Math.max(high, before);
      for (int row = row(high); row <= row(low); row++) {
        grid[row][column] = CURVE;
      }
    }
  }

  /** The interpolated value between a point and the one before it. */
  private double between(int next, double across) {
    Block.Point to = plot.points().get(next);
    Block.Point from = plot.points().get(next - 1);
    double share = (across - from.across()) / (to.across() - from.across());
    return from.up() + share * (to.up() - from.up());
  }

  private int row(double up) {
    return (int) Math.round((top - up) / (top - bottom) * (ROWS - 1));
  }

  /** The lower edge with its ticks, their numbers, and the name of the quantity. */
  private List<String> axis() {
    StringBuilder edge = new StringBuilder("-".repeat(columns));
    StringBuilder numbers = new StringBuilder(" ".repeat(columns));
    double step = step((right - left) / TICKS);
    int free = 0;
    for (double n = Math.ceil(left / step); n * step <= right; n++) {
      int column =
          (int) Math.min(columns - 1, Math.floor((n * step - left) / (right - left) * columns));
      edge.setCharAt(column, '+');
      String number = number(n, step);
      int start = Math.min(columns - number.length(), Math.max(0, column - number.length() / 2));
      if (start >= free) {
        numbers.replace(start, start + number.length(), number);
        free = start + number.length() + 1;
      }
    }
    String indent = " ".repeat(Math.max(1, gutter));
    return List.of(
        indent + " +" + edge,
        (indent + "  " + numbers).stripTrailing(),
        indent + "  " + safe.apply(plot.across()));
  }

  /** The least number of at least this size that is 1, 2 or 5 times a power of ten. */
  private static double step(double size) {
    double power = Math.pow(10, Math.floor(Math.log10(size)));
    for (int times : new int[] {1, 2, 5}) {
      if (times * power >= size) {
        return times * power;
      }
    }
    return 10 * power;
  }

  private static String number(double times, double step) {
    int decimals = Math.max(0, (int) -Math.floor(Math.log10(step)));
    BigDecimal number = BigDecimal.valueOf(times * step).setScale(decimals, RoundingMode.HALF_EVEN);
    return number.signum() == 0 ? "0" : number.toPlainString();
  }
}
