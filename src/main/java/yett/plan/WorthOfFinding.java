package yett.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Estimates what knowing the fault would be worth. For each hypothesis it holds the cost of the
 * repair once the fault is known, and the order of repairs. The more these orders differ, the more
 * checks still have to resolve (the idea is Sun and Weld's, 1993, from memory).
 */
final class WorthOfFinding {
  private final double[] known;
  private final double[] atLeast;
  private final int[] first;
  private final double[] classes;

  WorthOfFinding(Scene scene, RepairOrder order, int state) {
    int n = scene.hypotheses().length;
    known = new double[n];
    atLeast = new double[n];
    first = new int[n];
    Map<List<Integer>, Integer> kinds = new HashMap<>();
    boolean[] tried = new boolean[scene.repairs().size()];
    double[] sure = new double[n];
    for (int h = 0; h < n; h++) {
      sure[h] = 1;
      RepairOrder.Order best = order.order(sure, state, tried);
      known[h] = best.value();
      first[h] = kinds.computeIfAbsent(best.repairs(), k -> kinds.size());
      atLeast[h] = atLeast(scene, h);
      sure[h] = 0;
    }
    classes = new double[kinds.size()];
  }

  /**
   * A lower bound of the cost of a hypothesis: the dearest of the cheapest repairs of its causes,
   * without set-ups; or handing over.
   */
  private static double atLeast(Scene scene, int hypothesis) {
    double dearest = 0;
    for (int c : scene.hypotheses()[hypothesis]) {
      double cheapest = Double.POSITIVE_INFINITY;
      for (Scene.Job job : scene.repairs()) {
        if (job.removes()[c] > 0) {
          cheapest = Math.min(cheapest, job.cost() + scene.retestCost());
        }
      }
      dearest = Math.max(dearest, cheapest);
    }
    return Math.min(dearest, scene.leaving(hypothesis));
  }

  /** Average cost if the fault were known. */
  double known(double[] weights) {
    return average(weights, known);
  }

  /** A lower bound of the cost until the end, whatever is asked first. */
  double atLeast(double[] weights) {
    return average(weights, atLeast);
  }

  private static double average(double[] weights, double[] costs) {
    double sum = 0;
    for (int h = 0; h < weights.length; h++) {
      sum += weights[h] * costs[h];
    }
    return sum;
  }

  /**
   * How much is open about the order of repairs, 0 to 1: the chance that two gates drawn from these
   * weights need different orders (index of Gini and Simpson).
   */
  double open(double[] weights) {
    Arrays.fill(classes, 0);
    for (int h = 0; h < weights.length; h++) {
      classes[first[h]] += weights[h];
    }
    double same = 0;
    for (double p : classes) {
      same += p * p;
    }
    return 1 - same;
  }
}
