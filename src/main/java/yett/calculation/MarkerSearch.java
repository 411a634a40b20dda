package yett.calculation;

/**
 * How far a leaf creeps to find its reference once both supplies were lost and its position with
 * them. It runs one way until the marker passes the sensor, or to the end of its way and back. All
 * lengths in m, counted from closed. Source: geometry.
 *
 * @param opening D, the whole way
 * @param marker where the leaf stands as the marker passes the sensor
 * @param opensFirst whether the search begins towards open
 * @throws IllegalArgumentException if the opening is not positive or the marker not on the way
 */
public record MarkerSearch(double opening, double marker, boolean opensFirst) {
  public MarkerSearch {
    Require.positive("opening", opening);
    Require.between("place of the marker", marker, 0, opening);
  }

  /**
   * Way (m) of the search from where the leaf stands.
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
   * The longest way (m) of all positions: from the other end to the marker, or from beside the
   * marker to the end and back.
   */
  public double longest() {
    return Math.max(opensFirst ? marker : opening - marker, 2 * behind());
  }

  /** From the marker to the end that the search runs to first. */
  private double behind() {
    return opensFirst ? opening - marker : marker;
  }
}
