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

  private final double[][] chances;
  private final Map<String, List<EffectShowing>> showings;

  /**
   * @param chances by position of a cause, the chance of each of its effects
   */
  Effects(double[][] chances, Map<String, List<EffectShowing>> showings) {
    this.chances = chances;
    this.showings = showings;
  }

  /** By position of a cause, the chance of each of its effects before anything is seen. */
  double[][] chances() {
    return chances;
  }

  /** By check, those causes that show there by way of effects. */
  List<EffectShowing> showings(String check) {
    return showings.getOrDefault(check, List.of());
  }

  /** Effects as a model is put together. */
  static final class Builder {
    private final Map<String, List<EffectShowing>> showings = new LinkedHashMap<>();
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
          .add(new EffectShowing(cause, effects, sums, evenly));
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
