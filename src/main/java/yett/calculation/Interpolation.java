package yett.calculation;

/** Straight lines between the rows of a published table. */
final class Interpolation {
  private Interpolation() {}

  /** The value at x, where xs rise and x lies within them. */
  static double at(double x, double[] xs, double[] ys) {
    int row = 1;
    while (row < xs.length - 1 && x > xs[row]) {
      row++;
    }
    double share = (x - xs[row - 1]) / (xs[row] - xs[row - 1]);
    return ys[row - 1] + share * (ys[row] - ys[row - 1]);
  }
}
