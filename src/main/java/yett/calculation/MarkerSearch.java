package yett.calculation;

/**
 * Calculates how far a leaf creeps to find its reference after both supplies, and with them its
 * position, were lost. It runs one way until the marker passes the sensor; if it reaches the end of
 * its travel first, it turns back. All lengths in m, counted from closed. Source: geometry.
 *
 * @param opening D, the whole travel
 * @param marker position of the leaf at which the marker passes the sensor
 * @param opensFirst whether the search begins towards open
 * @throws IllegalArgumentException if the opening is not positive or the marker not between closed
 *     and open
 */
public record MarkerSearch(double opening, double marker, boolean opensFirst) {
  public MarkerSearch {
    Require.positive("opening", opening);
    Require.between("place of the marker", marker, 0, opening);
  }

  /**
   * Distance (m) of the search from a position of the leaf.
   *
   * @throws IllegalArgumentException if that is not between closed and open
   */
  public double from(double position) {
    Require.between("position of the leaf", position, 0, opening);
    double gap = opensFirst ? marker - position : position - marker;
    double toEnd = opensFirst ? opening - position : position;
    return gap >= 0 ? gap : toEnd + behind();
  }

  /**
   * The longest search (m) from any position: from the other end to the marker, or from beside the
   * marker to the end and back.
   */
  public double longest() {
    return Math.max(opensFirst ? marker : opening - marker, 2 * behind());
  }

  /** Distance (m) from the marker to the end that the search runs to first. */
  private double behind() {
    return opensFirst ? opening - marker : marker;
  }
}
