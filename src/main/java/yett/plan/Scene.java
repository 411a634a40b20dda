package yett.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Everything the search looks at, as numbers: hypotheses with their causes, checks with the chance
 * of each outcome under each hypothesis, repairs with the chance that they remove each cause.
 *
 * @param hypotheses causes of each hypothesis
 * @param causes how many causes there are
 * @param workshop the set-ups
 * @param retest set-ups in which the gate is tried after a repair
 * @param retestCost minutes of the try itself
 * @param handOver minutes that handing over costs
 * @param callBack minutes that a return visit costs
 * @param cured whether the gate already runs and only what may lie behind is looked for
 */
record Scene(
    int[][] hypotheses,
    int causes,
    List<Look> checks,
    List<Job> repairs,
    Workshop workshop,
    int retest,
    double retestCost,
    double handOver,
    double callBack,
    boolean cured) {

  /**
   * A check.
   *
   * @param cost minutes and hazard, without changes of set-up
   * @param chances by outcome, then by hypothesis
   */
  record Look(String id, double cost, int needs, double[][] chances) {}

  /**
   * A repair.
   *
   * @param cost minutes, parts and hazard, without changes of set-up and without the retest
   * @param removes by cause, the chance that it is removed if there
   */
  record Job(String id, double cost, int needs, double[] removes) {}

  /**
   * Weights of what remains after a repair that did not cure: they add up to the chance that it
   * does not. Where the remaining set is not among the hypotheses, the hypothesis stays as it is.
   */
  double[] afterFailure(double[] weights, int repair) {
    Map<List<Integer>, Integer> index = new HashMap<>();
    for (int h = 0; h < hypotheses.length; h++) {
      index.put(Arrays.stream(hypotheses[h]).boxed().toList(), h);
    }
    double[] removes = repairs.get(repair).removes();
    double[] left = new double[weights.length];
    for (int h = 0; h < weights.length; h++) {
      int[] set = hypotheses[h];
      for (int gone = 0; gone < 1 << set.length; gone++) {
        double chance = weights[h];
        for (int k = 0; k < set.length; k++) {
          chance *= (gone >> k & 1) != 0 ? removes[set[k]] : 1 - removes[set[k]];
        }
        if (chance > 0 && gone != (1 << set.length) - 1) {
          left[index.getOrDefault(without(set, gone), h)] += chance;
        }
      }
    }
    return left;
  }

  private static List<Integer> without(int[] set, int gone) {
    return IntStream.range(0, set.length)
        .filter(k -> (gone >> k & 1) == 0)
        .mapToObj(k -> set[k])
        .toList();
  }
}
