package yett.review;

import java.util.Arrays;

/** Computes the row of a cause from what shows when it is present, and rounds rows to figures. */
final class Rows {
  /** Half a percent of every row is spread evenly before use (yett.belief.CardModel). */
  private static final double SLIP = 0.005;

  private Rows() {}

  /**
   * The contribution of a cause. The outcome that shows is the more unusual of the base's and the
   * cause's, so cumulative chances multiply.
   *
   * @param shown chances of the outcomes when the cause is present
   * @param base chances when no cause is present
   */
  static double[] contribution(double[] shown, double[] base) {
    double[] row = new double[shown.length];
    double shownSum = 0;
    double baseSum = 0;
    double before = 0;
    for (int i = 0; i < row.length; i++) {
      shownSum += shown[i];
      baseSum += base[i];
      double sum = i == row.length - 1 ? 1 : Math.min(1, shownSum / baseSum);
      sum = Math.max(before, sum);
      row[i] = sum - before;
      before = sum;
    }
    return withoutSlip(row);
  }

  static double[] withoutSlip(double[] row) {
    double[] pure =
        Arrays.stream(row).map(p -> Math.max(0, (p - SLIP / row.length) / (1 - SLIP))).toArray();
    double sum = Arrays.stream(pure).sum();
    return Arrays.stream(pure).map(p -> p / sum).toArray();
  }

  /** The row in thousandths that add up to 1; the largest figure takes the rounding error. */
  static double[] figures(double[] row) {
    long[] thousandths = Arrays.stream(row).mapToLong(p -> Math.round(p * 1000)).toArray();
    int largest = 0;
    for (int i = 1; i < row.length; i++) {
      largest = row[i] > row[largest] ? i : largest;
    }
    thousandths[largest] += 1000 - Arrays.stream(thousandths).sum();
    return Arrays.stream(thousandths).mapToDouble(t -> t / 1000.0).toArray();
  }
}
