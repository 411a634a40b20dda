package yett.belief;

import java.util.Arrays;

/**
 * How causes show on one check, as cumulative rows over its ordered outcomes.
 *
 * <p>With base B and contributions C_c, P(Y &lt;= y | H) = B(y) prod_{c in H} C_c(y).
 */
public final class CheckTable {
  private static final double TOLERANCE = 1e-6;

  private final String id;
  private final double[] base;

  /** Cumulative row of each cause; null, or beyond the end, for a cause that does not show here. */
  private final double[][] rows;

  CheckTable(String id, double[] base, int[] causes, double[][] rows) {
    this.id = id;
    this.base = cumulative(id, base);
    this.rows = new double[Arrays.stream(causes).max().orElse(-1) + 1][];
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length != base.length) {
        throw new IllegalArgumentException(
            "a row of \"" + id + "\" has " + rows[i].length + " outcomes, not " + base.length);
      }
      this.rows[causes[i]] = cumulative(id, rows[i]);
    }
  }

  private static double[] cumulative(String id, double[] row) {
    double[] sums = new double[row.length];
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      if (!(row[i] >= 0)) {
        throw new IllegalArgumentException("a chance of \"" + id + "\" is " + row[i]);
      }
      sum += row[i];
      sums[i] = sum;
    }
    if (Math.abs(sum - 1) > TOLERANCE) {
      throw new IllegalArgumentException("a row of \"" + id + "\" adds up to " + sum);
    }
    // Exactly 1 from the last possible outcome on, so that impossible ones get no crumb of
    // rounding.
    for (int i = row.length - 1; i >= 0; i--) {
      sums[i] = 1;
      if (row[i] > 0) {
        break;
      }
    }
    return sums;
  }

  public String id() {
    return id;
  }

  public int outcomes() {
    return base.length;
  }

  private double[] row(int cause) {
    return cause < rows.length ? rows[cause] : null;
  }

  /**
   * Chance of each outcome under every hypothesis of a lattice.
   *
   * @return by outcome, then by hypothesis
   */
  double[][] outcomeChances(Lattice lattice) {
    double[][] chances = new double[outcomes()][lattice.size()];
    double[][] byCause = Arrays.copyOf(rows, lattice.causes());
    for (int y = 0; y < outcomes(); y++) {
      double[] cumulative = chances[y];
      cumulative[0] = base[y];
      for (int h = 1; h < cumulative.length; h++) {
        double[] row = byCause[lattice.last(h)];
        double before = cumulative[lattice.parent(h)];
        cumulative[h] = row == null ? before : before * row[y];
      }
    }
    for (int y = outcomes() - 1; y > 0; y--) {
      for (int h = 0; h < lattice.size(); h++) {
        chances[y][h] = Math.max(0, chances[y][h] - chances[y - 1][h]);
      }
    }
    return chances;
  }

  /**
   * Chance of each outcome under some sets of causes.
   *
   * @return by outcome, then by set
   */
  double[][] outcomeChances(int[][] sets) {
    double[][] chances = new double[outcomes()][sets.length];
    for (int i = 0; i < sets.length; i++) {
      double[] row = outcomeChances(sets[i]);
      for (int y = 0; y < row.length; y++) {
        chances[y][i] = row[y];
      }
    }
    return chances;
  }

  /** Chance of each outcome when exactly these causes are present. */
  public double[] outcomeChances(int... present) {
    double[] chances = base.clone();
    for (int cause : present) {
      double[] row = row(cause);
      for (int y = 0; row != null && y < chances.length; y++) {
        chances[y] *= row[y];
      }
    }
    for (int y = chances.length - 1; y > 0; y--) {
      chances[y] = Math.max(0, chances[y] - chances[y - 1]);
    }
    return chances;
  }
}
