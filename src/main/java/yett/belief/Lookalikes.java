package yett.belief;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Finds pairs of causes that no check distinguishes well, from the row of each cause alone.
 *
 * <p>The measure is the total variation distance between a check's outcomes under one cause and
 * under the other: 0 if they look the same, 1 if one look decides. A single look can raise the
 * chance of naming the right one of the two from a half to at most (1 + distance) / 2 (Le Cam; see
 * Lehmann and Romano, Testing Statistical Hypotheses).
 */
public final class Lookalikes {
  private Lookalikes() {}

  /**
   * Two causes and the check that distinguishes them best.
   *
   * @param check empty if none does at all
   * @param distance total variation on that check, 0 to 1
   */
  public record Pair(String one, String other, String check, double distance) {}

  /**
   * Pairs with a distance below a limit on every check, the most alike first.
   *
   * @param checks ids of the checks to use
   * @param less the limit
   */
  public static List<Pair> among(CausalModel model, Set<String> checks, double less) {
    int n = model.causes().size();
    int[][] alone = new int[n][];
    for (int c = 0; c < n; c++) {
      alone[c] = new int[] {c};
    }
    double[][] most = new double[n][n];
    String[][] best = new String[n][n];
    for (String check : checks) {
      double[][] rows = model.table(check).outcomeChances(alone);
      for (int a = 0; a < n; a++) {
        for (int b = a + 1; b < n; b++) {
          double distance = distance(rows, a, b);
          if (distance > most[a][b]) {
            most[a][b] = distance;
            best[a][b] = check;
          }
        }
      }
    }
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        if (most[a][b] < less) {
          String check = best[a][b] == null ? "" : best[a][b];
          pairs.add(new Pair(model.causes().get(a), model.causes().get(b), check, most[a][b]));
        }
      }
    }
    pairs.sort((x, y) -> Double.compare(x.distance(), y.distance()));
    return pairs;
  }

  private static double distance(double[][] rows, int a, int b) {
    double sum = 0;
    for (double[] outcome : rows) {
      sum += Math.abs(outcome[a] - outcome[b]);
    }
    return sum / 2;
  }
}
