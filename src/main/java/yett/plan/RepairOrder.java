package yett.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The best order of repairs when nothing more is asked: each repair is followed by a try of the
 * gate, and handing over is possible at any point. Exact by dynamic programming over subsets of the
 * repairs that matter most; with one fault, independent repairs and no set-ups it is the order by
 * falling probability over cost (Kadane and Simon 1977).
 */
final class RepairOrder {
  private final Scene scene;
  private final int limit;

  /**
   * @param limit how many repairs are put in order; what only others could cure is handed over
   */
  RepairOrder(Scene scene, int limit) {
    this.scene = scene;
    this.limit = limit;
  }

  /**
   * @param value expected cost until the end
   * @param repairs positions of the repairs to do, in order, each only if those before did not cure
   * @param chances for each of them the chance that it is reached
   */
  record Order(double value, List<Integer> repairs, List<Double> chances) {}

  /** Expected cost in a state of the work under these weights of the hypotheses. */
  double value(double[] weights, int state) {
    return value(weights, state, -1);
  }

  /** The same when a repair, if not negative, has been tried in vain. */
  double value(double[] weights, int state, int tried) {
    return new Table(weights, state, tried).value();
  }

  Order order(double[] weights, int state) {
    return new Table(weights, state, -1).order();
  }

  /** Dynamic programming over the subsets of the chosen repairs. */
  private final class Table {
    private final int[] chosen;
    private final int[] stateAfter;
    private final double[][] cost;
    private final double[] failing;
    private final double[][] best;
    private final int[][] next;
    private final double total;

    Table(double[] weights, int state, int tried) {
      chosen = choose(weights, tried);
      int n = chosen.length;
      Workshop workshop = scene.workshop();
      stateAfter = new int[n + 1];
      stateAfter[n] = state;
      for (int r = 0; r < n; r++) {
        int needs = scene.repairs().get(chosen[r]).needs();
        stateAfter[r] = workshop.after(workshop.after(0, needs), scene.retest());
      }
      cost = new double[n + 1][n];
      for (int from = 0; from <= n; from++) {
        for (int r = 0; r < n; r++) {
          Scene.Job job = scene.repairs().get(chosen[r]);
          int ready = workshop.after(stateAfter[from], job.needs());
          cost[from][r] =
              workshop.change(stateAfter[from], job.needs())
                  + job.cost()
                  + workshop.change(ready, scene.retest())
                  + scene.retestCost();
        }
      }
      failing = failing(weights);
      total = failing[0];
      best = new double[1 << n][n + 1];
      next = new int[1 << n][n + 1];
      for (int done = (1 << n) - 1; done >= 0; done--) {
        for (int from = 0; from <= n; from++) {
          if (from == n ? done == 0 : (done >> from & 1) != 0) {
            solve(done, from);
          }
        }
      }
    }

    /** The repairs that remove most probability for their cost. */
    private int[] choose(double[] weights, int tried) {
      double[] marginals = new double[scene.causes()];
      for (int h = 0; h < weights.length; h++) {
        for (int c : scene.hypotheses()[h]) {
          marginals[c] += weights[h];
        }
      }
      List<Integer> order = new ArrayList<>();
      double[] scores = new double[scene.repairs().size()];
      for (int r = 0; r < scores.length; r++) {
        Scene.Job job = scene.repairs().get(r);
        for (int c = 0; c < marginals.length; c++) {
          scores[r] += marginals[c] * job.removes()[c];
        }
        scores[r] /= Math.max(job.cost() + scene.retestCost(), 0.1);
        if (scores[r] > 1e-9 && r != tried) {
          order.add(r);
        }
      }
      order.sort(Comparator.<Integer>comparingDouble(r -> -scores[r]).thenComparingInt(r -> r));
      return order.stream().limit(limit).mapToInt(Integer::intValue).toArray();
    }

    /** Chance that the gate still fails after each subset of the chosen repairs. */
    private double[] failing(double[] weights) {
      int n = chosen.length;
      double[][] stays = new double[scene.causes()][];
      for (int c = 0; c < stays.length; c++) {
        double[] row = new double[1 << n];
        row[0] = 1;
        for (int done = 1; done < row.length; done++) {
          int r = Integer.numberOfTrailingZeros(done);
          row[done] = row[done & (done - 1)] * (1 - scene.repairs().get(chosen[r]).removes()[c]);
        }
        stays[c] = row;
      }
      double[] failing = new double[1 << n];
      for (int h = 0; h < weights.length; h++) {
        int[] causes = scene.hypotheses()[h];
        if (weights[h] == 0) {
          continue;
        }
        if (causes.length == 0) {
          failing[0] += scene.cured() ? 0 : weights[h];
          continue;
        }
        for (int done = 0; done < failing.length; done++) {
          double gone = 1;
          for (int c : causes) {
            gone *= 1 - stays[c][done];
          }
          failing[done] += weights[h] * (1 - gone);
        }
      }
      return failing;
    }

    private void solve(int done, int from) {
      double closing = scene.workshop().close(stateAfter[from]);
      double least = giveUp(done) + closing;
      int choice = -1;
      for (int r = 0; r < chosen.length; r++) {
        if ((done >> r & 1) == 0) {
          double value = doing(done, from, r);
          if (value < least - 1e-12) {
            least = value;
            choice = r;
          }
        }
      }
      best[done][from] = least;
      next[done][from] = choice;
    }

    private double giveUp(int done) {
      return scene.cured() ? failing[done] * scene.callBack() : scene.handOver();
    }

    private double doing(int done, int from, int r) {
      int then = done | 1 << r;
      if (scene.cured()) {
        return cost[from][r] + best[then][r];
      }
      double fails = failing[done] > 0 ? Math.min(1, failing[then] / failing[done]) : 0;
      return cost[from][r]
          + fails * best[then][r]
          + (1 - fails) * scene.workshop().close(stateAfter[r]);
    }

    double value() {
      return best[0][chosen.length];
    }

    Order order() {
      List<Integer> repairs = new ArrayList<>();
      List<Double> chances = new ArrayList<>();
      int done = 0;
      for (int from = chosen.length; next[done][from] >= 0; ) {
        int r = next[done][from];
        repairs.add(chosen[r]);
        chances.add(total > 0 ? Math.min(1, failing[done] / total) : 0);
        done |= 1 << r;
        from = r;
      }
      return new Order(value(), repairs, chances);
    }
  }
}
