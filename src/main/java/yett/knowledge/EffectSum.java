package yett.knowledge;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Computes P(Y &lt;= y | one cause) by summing over all combinations of its effects. Each effect is
 * present by noisy-OR of what leads to it, and the cumulative rows of present effects multiply. An
 * effect that leads to no other relevant effect adds no branch.
 */
final class EffectSum {
  /** By effect: the positions of the effects that it leads to, and the factors on their absence. */
  private final int[][] children;

  private final double[][] spares;

  /** By effect: the chance that the cause does not lead to it directly. */
  private final double[] unmade;

  /** For one look, by effect: its cumulative row or null; whether and how it matters. */
  private double[][] rows;

  private boolean[] matters;
  private boolean[] leads;
  private double[] sum;

  /**
   * @param cause effects that the cause leads to, with chances
   * @param reached effects, each after those that lead to it
   */
  EffectSum(Map<String, Double> cause, List<Effect> reached) {
    Map<String, Integer> places = new HashMap<>();
    reached.forEach(effect -> places.put(effect.id(), places.size()));
    children = new int[reached.size()][];
    spares = new double[reached.size()][];
    unmade = new double[reached.size()];
    Arrays.fill(unmade, 1);
    cause.forEach(
        (to, chance) -> {
          if (places.containsKey(to)) {
            unmade[places.get(to)] = 1 - chance;
          }
        });
    for (int e = 0; e < children.length; e++) {
      Map<String, Double> leadsTo = reached.get(e).leadsTo();
      List<String> to = leadsTo.keySet().stream().filter(places::containsKey).toList();
      children[e] = to.stream().mapToInt(places::get).toArray();
      spares[e] = to.stream().mapToDouble(id -> 1 - leadsTo.get(id)).toArray();
    }
  }

  /**
   * The cumulative row of the cause for one look.
   *
   * @param shown by effect, its cumulative row; null for one that shows nothing here
   * @return cumulative row
   */
  double[] of(double[][] shown, int outcomes) {
    rows = shown;
    matters = new boolean[shown.length];
    leads = new boolean[shown.length];
    for (int e = shown.length - 1; e >= 0; e--) {
      for (int child : children[e]) {
        leads[e] |= matters[child];
      }
      matters[e] = leads[e] || shown[e] != null;
    }
    sum = new double[outcomes];
    double[] certain = new double[outcomes];
    Arrays.fill(certain, 1);
    from(0, certain);
    return sum;
  }

  /**
   * Sums over the effects from one position on.
   *
   * @param product chance of the decisions so far times the rows of the effects present
   */
  private void from(int next, double[] product) {
    int effect = next;
    while (effect < rows.length && !matters[effect]) {
      effect++;
    }
    if (effect == rows.length) {
      for (int y = 0; y < sum.length; y++) {
        sum[y] += product[y];
      }
      return;
    }
    double absent = unmade[effect];
    if (!leads[effect]) {
      from(effect + 1, times(product, absent, 1 - absent, rows[effect]));
      return;
    }
    if (absent > 0) {
      from(effect + 1, times(product, absent, 0, null));
    }
    if (absent < 1) {
      int[] made = children[effect];
      double[] before = new double[made.length];
      for (int i = 0; i < made.length; i++) {
        before[i] = unmade[made[i]];
        unmade[made[i]] *= spares[effect][i];
      }
      from(effect + 1, times(product, 0, 1 - absent, rows[effect]));
      for (int i = 0; i < made.length; i++) {
        unmade[made[i]] = before[i];
      }
    }
  }

  private static double[] times(double[] product, double absent, double present, double[] row) {
    double[] result = product.clone();
    for (int y = 0; y < result.length; y++) {
      result[y] *= absent + present * (row == null ? 1 : row[y]);
    }
    return result;
  }
}
