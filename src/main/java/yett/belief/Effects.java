package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How causes show through their effects, that is, states of the machine that they may bring about.
 * The tables of the checks already include effects for the first look; this is needed for further
 * looks.
 */
final class Effects {
  /** For a model without effects. */
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

  /** For each position of a cause, the prior chance of each of its effects. */
  double[][] chances() {
    return chances;
  }

  /** The causes that show on a check through effects. */
  List<EffectShowing> showings(String check) {
    return showings.getOrDefault(check, List.of());
  }

  /** Collects the effects while a model is built. */
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
