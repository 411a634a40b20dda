package yett.review;

import java.util.Arrays;

/**
 * From what is shown when a cause is there back to the row that makes it so, and figures to write.
 */
final class Rows {
  /** Half a percent of every row is spread evenly before it is used (yett.belief.CardModel). */
  private static final double SLIP = 0.005;

  private Rows() {}

  /**
   * The contribution of a cause: what is shown is the most telling of the base's and the cause's,
   * so cumulative chances multiply.
   *
   * @param shown chances of the outcomes when the cause is there
   * @param base the same when no cause is
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

  /** In thousandths that add up to 1: the largest takes what rounding left. */
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
