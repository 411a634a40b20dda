package yett.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Looks ahead: what a check saves is the cost of the best order of repairs now, less the average of
 * that cost after each of its outcomes. One step for every check, two for the most promising.
 */
final class Search {
  /** Repairs put in order when looking ahead, and when the plan itself is made. */
  private static final int REPAIRS_AHEAD = 5;

  private static final int REPAIRS_NOW = 8;
  private static final int NONE = -1;
  private static final int DEEPER = 5;
  private static final int INNER = 7;

  private final Scene scene;
  private final RepairOrder ahead;
  private final RepairOrder now;

  Search(Scene scene) {
    this.scene = scene;
    this.ahead = new RepairOrder(scene, REPAIRS_AHEAD);
    this.now = new RepairOrder(scene, REPAIRS_NOW);
  }

  /**
   * A check as the next step.
   *
   * @param check its position in the scene
   * @param value expected cost until the end if it comes first
   */
  record Ranked(int check, double value) {}

  /**
   * @param order the best order of repairs if nothing more is asked
   * @param checks all checks, the best first
   * @param repairFirst expected cost if the first repair is done now and checks may follow
   */
  record Result(RepairOrder.Order order, List<Ranked> checks, double repairFirst) {}

  Result run(double[] weights, int state) {
    RepairOrder.Order order = now.order(weights, state);
    List<Ranked> ranked = new ArrayList<>();
    for (int c = 0; c < scene.checks().size(); c++) {
      if (tells(c, weights)) {
        ranked.add(new Ranked(c, asking(c, weights, state, List.of(), NONE)));
      }
    }
    ranked.sort(byValue());
    List<Integer> inner = ranked.stream().limit(INNER).map(Ranked::check).toList();
    List<Ranked> refined = new ArrayList<>();
    for (int i = 0; i < ranked.size(); i++) {
      Ranked r = ranked.get(i);
      refined.add(
          i < DEEPER ? new Ranked(r.check(), asking(r.check(), weights, state, inner, NONE)) : r);
    }
    refined.sort(byValue());
    return new Result(order, refined, repairing(order, weights, state, inner));
  }

  private Comparator<Ranked> byValue() {
    return Comparator.comparingDouble(Ranked::value)
        .thenComparing(r -> scene.checks().get(r.check()).id());
  }

  /** Whether the outcomes of a check depend on which hypothesis is true at all. */
  private boolean tells(int check, double[] weights) {
    for (double[] row : scene.checks().get(check).chances()) {
      double least = 1;
      double most = 0;
      for (int h = 0; h < row.length; h++) {
        if (weights[h] > 1e-6) {
          least = Math.min(least, row[h]);
          most = Math.max(most, row[h]);
        }
      }
      if (most - least > 0.01) {
        return true;
      }
    }
    return false;
  }

  private double asking(int check, double[] weights, int state, List<Integer> then, int tried) {
    Scene.Look look = scene.checks().get(check);
    Workshop workshop = scene.workshop();
    int after = workshop.after(state, look.needs());
    double value = workshop.change(state, look.needs()) + look.cost();
    for (double[] row : look.chances()) {
      double[] posterior = new double[weights.length];
      double chance = 0;
      for (int h = 0; h < posterior.length; h++) {
        posterior[h] = weights[h] * row[h];
        chance += posterior[h];
      }
      if (chance > 1e-9) {
        for (int h = 0; h < posterior.length; h++) {
          posterior[h] /= chance;
        }
        value += chance * bestThen(posterior, after, then, check, tried);
      }
    }
    return value;
  }

  private double bestThen(double[] weights, int state, List<Integer> then, int asked, int tried) {
    double best = ahead.value(weights, state, tried);
    for (int next : then) {
      if (next != asked) {
        best = Math.min(best, asking(next, weights, state, List.of(), tried));
      }
    }
    return best;
  }

  /** Cost of doing the first repair of the order, and of the best that can follow its failure. */
  private double repairing(
      RepairOrder.Order order, double[] weights, int state, List<Integer> then) {
    if (order.repairs().isEmpty() || scene.cured()) {
      return order.value();
    }
    Workshop workshop = scene.workshop();
    Scene.Job job = scene.repairs().get(order.repairs().get(0));
    int ready = workshop.after(state, job.needs());
    int after = workshop.after(ready, scene.retest());
    double cost =
        workshop.change(state, job.needs())
            + job.cost()
            + workshop.change(ready, scene.retest())
            + scene.retestCost();
    double[] left = scene.afterFailure(weights, order.repairs().get(0));
    double fails = Arrays.stream(left).sum();
    if (fails < 1e-9) {
      return cost + workshop.close(after);
    }
    for (int h = 0; h < left.length; h++) {
      left[h] /= fails;
    }
    double value =
        cost
            + fails * bestThen(left, after, then, -1, order.repairs().get(0))
            + (1 - fails) * workshop.close(after);
    return Math.min(value, order.value());
  }
}
