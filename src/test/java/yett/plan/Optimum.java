package yett.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The lowest expected cost there is, and that of following the search, by going through everything
 * that can be asked, answered, done and found. Its weights are joint chances, not posteriors, and
 * it reckons set-ups and repairs by itself.
 */
final class Optimum {
  /** Worlds with less than this are followed no further; they cost at most a hand-over each. */
  private static final double DUST = 1e-7;

  private final Scene scene;
  private final Map<String, Double> best = new HashMap<>();
  private final Map<String, Double> followed = new HashMap<>();

  Optimum(Scene scene) {
    this.scene = scene;
  }

  double best(double[] weights, int state) {
    return best(weights, state, 0, 0);
  }

  /** Cost of following the search, each step decided as the planner decides it. */
  double followed(double[] weights, int state) {
    return followed(weights, state, 0, 0);
  }

  private double best(double[] joint, int state, int asked, int tried) {
    double total = Arrays.stream(joint).sum();
    if (total < DUST) {
      return total * scene.handOver();
    }
    String key = key(joint, state, asked, tried);
    Double known = best.get(key);
    if (known != null) {
      return known;
    }
    double least = total * (scene.handOver() + leaving(state));
    for (int k = 0; k < scene.checks().size(); k++) {
      if ((asked >> k & 1) == 0) {
        double value = total * entering(state, scene.checks().get(k).needs());
        value += total * scene.checks().get(k).cost();
        int then = state(state, scene.checks().get(k).needs());
        for (double[] row : scene.checks().get(k).chances()) {
          value += value < least ? best(times(joint, row), then, asked | 1 << k, tried) : 0;
        }
        least = Math.min(least, value);
      }
    }
    for (int r = 0; r < scene.repairs().size(); r++) {
      if ((tried >> r & 1) == 0) {
        double[] left = left(joint, r);
        double value = total * costOf(r, state);
        int then = stateAfter(r, state);
        value += (total - Arrays.stream(left).sum()) * leaving(then);
        value += value < least ? best(left, then, asked, tried | 1 << r) : 0;
        least = Math.min(least, value);
      }
    }
    best.put(key, least);
    return least;
  }

  private double followed(double[] joint, int state, int asked, int tried) {
    double total = Arrays.stream(joint).sum();
    if (total < DUST) {
      return total * scene.handOver();
    }
    String key = key(joint, state, asked, tried);
    Double known = followed.get(key);
    if (known != null) {
      return known;
    }
    double value = follow(joint, total, state, asked, tried);
    followed.put(key, value);
    return value;
  }

  private double follow(double[] joint, double total, int state, int asked, int tried) {
    Scene left = without(asked, tried);
    double[] weights = Arrays.stream(joint).map(w -> w / total).toArray();
    Search.Result result = new Search(left).run(weights, state);
    double repairing = Math.min(result.order().value(), result.repairFirst());
    if (!result.checks().isEmpty() && result.checks().get(0).value() < repairing - 1e-9) {
      int k = index(left.checks().get(result.checks().get(0).check()).id());
      Scene.Look look = scene.checks().get(k);
      double value = total * (entering(state, look.needs()) + look.cost());
      for (double[] row : look.chances()) {
        value += followed(times(joint, row), state(state, look.needs()), asked | 1 << k, tried);
      }
      return value;
    }
    int first =
        result.first() >= 0
            ? result.first()
            : result.order().repairs().isEmpty() ? -1 : result.order().repairs().get(0);
    if (first < 0) {
      return total * (scene.handOver() + leaving(state));
    }
    int r = index(left.repairs().get(first).id());
    double[] after = left(joint, r);
    int then = stateAfter(r, state);
    return total * costOf(r, state)
        + (total - Arrays.stream(after).sum()) * leaving(then)
        + followed(after, then, asked, tried | 1 << r);
  }

  private static int index(String id) {
    return Integer.parseInt(id.substring(1));
  }

  private Scene without(int asked, int tried) {
    return new Scene(
        scene.hypotheses(),
        scene.causes(),
        scene.checks().stream().filter(c -> (asked >> index(c.id()) & 1) == 0).toList(),
        scene.repairs().stream().filter(r -> (tried >> index(r.id()) & 1) == 0).toList(),
        scene.workshop(),
        scene.retest(),
        scene.retestCost(),
        scene.handOver(),
        scene.callBack(),
        scene.due(),
        false);
  }

  private static double[] times(double[] joint, double[] row) {
    double[] product = new double[joint.length];
    for (int h = 0; h < joint.length; h++) {
      product[h] = joint[h] * row[h];
    }
    return product;
  }

  /** What remains of each set when a repair did not cure. */
  private double[] left(double[] joint, int repair) {
    double[] removes = scene.repairs().get(repair).removes();
    double[] left = new double[joint.length];
    for (int h = 0; h < joint.length; h++) {
      for (int t = 0; t < joint.length; t++) {
        left[t] += joint[h] * becoming(scene.hypotheses()[h], scene.hypotheses()[t], removes);
      }
    }
    return left;
  }

  private static double becoming(int[] from, int[] to, double[] removes) {
    double chance = 1;
    int kept = 0;
    for (int c : from) {
      boolean stays = Arrays.stream(to).anyMatch(d -> d == c);
      kept += stays ? 1 : 0;
      chance *= stays ? 1 - removes[c] : removes[c];
    }
    return kept == to.length ? chance : 0;
  }

  private double costOf(int repair, int state) {
    Scene.Job job = scene.repairs().get(repair);
    return entering(state, job.needs())
        + job.cost()
        + entering(state(state, job.needs()), scene.retest())
        + scene.retestCost();
  }

  private int stateAfter(int repair, int state) {
    return state(state(state, scene.repairs().get(repair).needs()), scene.retest());
  }

  // The set-ups are the workshop's business; their costs have a test of their own.

  private double entering(int state, int needs) {
    return scene.workshop().change(state, needs);
  }

  private int state(int state, int needs) {
    return scene.workshop().after(state, needs);
  }

  private double leaving(int state) {
    return scene.workshop().close(state);
  }

  private static String key(double[] joint, int state, int asked, int tried) {
    StringBuilder key = new StringBuilder().append(state).append(' ').append(asked).append(' ');
    key.append(tried);
    for (double w : joint) {
      key.append(' ').append(Math.round(w * 1e12));
    }
    return key.toString();
  }
}
