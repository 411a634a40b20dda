package yett.worksheet;

import java.util.List;

/**
 * A curve to go with results. What matters in it is also said in words, for people who cannot see
 * it.
 *
 * @param points from left to right
 * @param levels horizontal lines, such as limits
 * @param across label of the horizontal axis, with its unit
 * @param up label of the vertical axis, with its unit
 */
public record Plot(List<Point> points, List<Level> levels, String across, String up) {
  public Plot {
    points = List.copyOf(points);
    levels = List.copyOf(levels);
  }

  public record Point(double across, double up) {}

  public record Level(String label, double up) {}
}
