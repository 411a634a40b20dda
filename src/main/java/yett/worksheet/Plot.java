package yett.worksheet;

import java.util.List;

/**
 * A curve that belongs to results, for those who can see it; what matters in it is said in words.
 *
 * @param points from left to right
 * @param levels lines across, such as limits
 * @param across what runs from left to right, with its unit
 * @param up what runs upwards, with its unit
 */
public record Plot(List<Point> points, List<Level> levels, String across, String up) {
  public Plot {
    points = List.copyOf(points);
    levels = List.copyOf(levels);
  }

  public record Point(double across, double up) {}

  public record Level(String label, double up) {}
}
