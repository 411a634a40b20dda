package yett.belief;

import java.util.Arrays;
import java.util.List;

/**
 * How one cause shows on one check through its effects.
 *
 * @param cause position of the cause
 * @param effects positions of those of the cause's effects that show here
 * @param rows by each of these, its cumulative row over the outcomes
 * @param evenly share of the row that is spread evenly over the outcomes
 */
record EffectShowing(int cause, int[] effects, double[][] rows, double evenly) {

  /** Cumulative row if exactly these effects are present, as bits over {@link #effects}. */
  private double[] row(int there, int outcomes) {
    double[] row = new double[outcomes];
    Arrays.fill(row, 1);
    for (int e = 0; e < rows.length; e++) {
      for (int y = 0; (there >> e & 1) != 0 && y < outcomes; y++) {
        row[y] *= rows[e][y];
      }
    }
    for (int y = 0; y < outcomes; y++) {
      row[y] = (1 - evenly) * row[y] + evenly * (y + 1) / outcomes;
    }
    return row;
  }

  private double chance(int there, double[] chances) {
    double chance = 1;
    for (int e = 0; e < effects.length; e++) {
      chance *= (there >> e & 1) != 0 ? chances[effects[e]] : 1 - chances[effects[e]];
    }
    return chance;
  }

  /** Cumulative row with each effect present with its own chance. */
  double[] row(double[] chances, int outcomes) {
    double[] sum = new double[outcomes];
    for (int there = 0; there < 1 << effects.length; there++) {
      double chance = chance(there, chances);
      double[] row = row(there, outcomes);
      for (int y = 0; y < outcomes; y++) {
        sum[y] += chance * row[y];
      }
    }
    return sum;
  }

  /**
   * Chances of the cause's effects after an observation, if no other cause is present: each is
   * summed over the others, and all are then treated as independent again.
   *
   * @param base cumulative row without any cause
   */
  double[] after(double[] chances, double[] base, List<Double> weights) {
    double[] after = new double[effects.length];
    double all = 0;
    for (int there = 0; there < 1 << effects.length; there++) {
      double chance = chance(there, chances) * given(row(there, base.length), base, weights);
      all += chance;
      for (int e = 0; e < after.length; e++) {
        after[e] += (there >> e & 1) != 0 ? chance : 0;
      }
    }
    double[] next = chances.clone();
    for (int e = 0; all > 0 && e < after.length; e++) {
      next[effects[e]] = Math.min(1, after[e] / all);
    }
    return next;
  }

  private static double given(double[] row, double[] base, List<Double> weights) {
    double chance = 0;
    double before = 0;
    for (int y = 0; y < base.length; y++) {
      double sum = base[y] * row[y];
      chance += weights.get(y) * (sum - before);
      before = sum;
    }
    return Math.max(0, chance);
  }
}
