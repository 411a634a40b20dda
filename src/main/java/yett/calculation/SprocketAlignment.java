package yett.calculation;

/** How far the faces of two sprockets, or of a sprocket and a guide wheel, may be out of line. */
public final class SprocketAlignment {
  private SprocketAlignment() {}

  /**
   * Permissible offset (m) to either side for a centre distance (m): 1 mm up to 1 m, a thousandth
   * of the distance from 1 m to 10 m, 10 mm above. Source: Complete Guide to Chain, 7.1.2.2, fig.
   * 7.7.
   *
   * @throws IllegalArgumentException if the distance is not positive
   */
  public static double permissibleOffset(double centreDistance) {
    Require.positive("centre distance", centreDistance);
    return Math.min(Math.max(0.001, centreDistance / 1000), 0.010);
  }
}
