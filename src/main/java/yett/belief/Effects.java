package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What causes show by way of states of the machine that they may or may not bring about. The tables
 * of the checks hold what comes of it at the first look; this is what further looks need.
 */
final class Effects {
  /** Of a model whose causes show by themselves only. */
  static final Effects NONE = new Effects(new double[0][], Map.of());

  /**
   * How one cause shows on one check by way of its effects.
   *
   * @param cause position of the cause
   * @param effects which of the cause's effects show here
   * @param rows by each of these, its cumulative row over the outcomes
   * @param evenly share of the row that is spread evenly over the outcomes
   */
  record Showing(int cause, int[] effects, double[][] rows, double evenly) {

    /** Cumulative row if exactly these effects are there, as bits over {@link #effects}. */
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

    /** Cumulative row with each effect there by its own chance. */
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
     * Chances of the cause's effects after an observation, if nothing else is there: each by the
     * sum over the others, all then taken as independent again.
     *
     * @param base cumulative row of what shows without any cause
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

  private final double[][] chances;
  private final Map<String, List<Showing>> showings;

  /**
   * @param chances by position of a cause, the chance of each of its effects
   */
  Effects(double[][] chances, Map<String, List<Showing>> showings) {
    this.chances = chances;
    this.showings = showings;
  }

  /** By position of a cause, the chance of each of its effects before anything is seen. */
  double[][] chances() {
    return chances;
  }

  /** By check, those causes that show there by way of effects. */
  List<Showing> showings(String check) {
    return showings.getOrDefault(check, List.of());
  }

  /** Effects as a model is put together. */
  static final class Builder {
    private final Map<String, List<Showing>> showings = new LinkedHashMap<>();
    private final Map<Integer, Map<String, Double>> chances = new HashMap<>();

    void effects(int cause, Map<String, Double> each) {
      chances.put(cause, new LinkedHashMap<>(each));
    }

    void shows(String check, int cause, Map<String, double[]> rows, double evenly) {
      List<String> known = new ArrayList<>(chances.getOrDefault(cause, Map.of()).keySet());
      int[] effects = rows.keySet().stream().mapToInt(known::indexOf).toArray();
      double[][] sums = rows.values().stream().map(Builder::cumulative).toArray(double[][]::new);
      showings
          .computeIfAbsent(check, c -> new ArrayList<>())
          .add(new Showing(cause, effects, sums, evenly));
    }

    private static double[] cumulative(double[] row) {
      double[] sums = row.clone();
      for (int y = 1; y < sums.length; y++) {
        sums[y] = Math.min(1, sums[y] + sums[y - 1]);
      }
      sums[sums.length - 1] = 1;
      return sums;
    }

    Effects build(int causes) {
      if (showings.isEmpty()) {
        return NONE;
      }
      double[][] all = new double[causes][];
      Arrays.setAll(
          all,
          c ->
              chances.getOrDefault(c, Map.of()).values().stream()
                  .mapToDouble(Double::doubleValue)
                  .toArray());
      return new Effects(all, showings);
    }
  }
}
