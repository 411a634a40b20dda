package yett.plan;

import java.util.Optional;

/**
 * Decides whether the next repair rests only on a suspicion, and which check would confirm or clear
 * it first: measure, then repair. The search alone compares minutes, and fitting a cheap part on a
 * chance of one half can be quickest on average. But it disturbs the gate and hides what was wrong,
 * and people stop trusting somebody who fits one part after another.
 */
final class Confirming {
  /** Chance from which a repair needs no confirming. */
  static final double SURE = 0.8;

  /** Share of the doubt that a check has to remove, on average, to count as confirming. */
  static final double TELLS = 0.25;

  private final Scene scene;
  private final double[] weights;
  private final int state;

  /**
   * @param weights of the hypotheses; they add up to 1
   * @param state set-ups in force
   */
  Confirming(Scene scene, double[] weights, int state) {
    this.scene = scene;
    this.weights = weights;
    this.state = state;
  }

  /**
   * The check to make before a repair. Of the checks that remove enough of the doubt and cost no
   * more than the repair with its retest, it is the one that removes most for its cost.
   *
   * @param repair number of the repair in the scene
   * @return number of the check; empty if the repair is sure enough, or no check confirms
   */
  Optional<Integer> before(int repair) {
    Scene.Job job = scene.repairs().get(repair);
    return before(repair, mends(removedByNothingCheaper(job)))
        .or(() -> before(repair, mends(job.removes())));
  }

  private Optional<Integer> before(int repair, double[] mends) {
    double chance = chance(mends);
    if (chance >= SURE || chance <= 0) {
      return Optional.empty();
    }
    double most = scene.trying(repair, state);
    int best = -1;
    double bestWorth = 0;
    for (int k = 0; k < scene.checks().size(); k++) {
      Scene.Look look = scene.checks().get(k);
      double cost = scene.asking(look, state);
      double taken = doubtRemoved(look, mends, chance);
      if (taken >= TELLS && cost <= most && taken / cost > bestWorth) {
        best = k;
        bestWorth = taken / cost;
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(best);
  }

  private double chance(double[] mends) {
    double chance = 0;
    for (int h = 0; h < weights.length; h++) {
      chance += weights[h] * mends[h];
    }
    return chance;
  }

  /** For each hypothesis, the chance that the repair removes one of its causes. */
  private double[] mends(double[] removes) {
    double[] mends = new double[weights.length];
    for (int h = 0; h < mends.length; h++) {
      double none = 1;
      for (int cause : scene.hypotheses()[h]) {
        none *= 1 - removes[cause];
      }
      mends[h] = 1 - none;
    }
    return mends;
  }

  /**
   * For each cause, the chance that the repair removes it, 0 if a cheaper repair removes it as
   * surely. New batteries put flat ones right, but so does charging them.
   */
  private double[] removedByNothingCheaper(Scene.Job job) {
    double[] own = job.removes().clone();
    for (Scene.Job other : scene.repairs()) {
      for (int cause = 0; cause < own.length; cause++) {
        if (other.cost() < job.cost() && other.removes()[cause] >= job.removes()[cause]) {
          own[cause] = 0;
        }
      }
    }
    return own;
  }

  /** Average share of the doubt p (1 - p) that a check removes. */
  private double doubtRemoved(Scene.Look look, double[] mends, double chance) {
    double left = 0;
    for (double[] outcome : look.chances()) {
      double all = 0;
      double mended = 0;
      for (int h = 0; h < weights.length; h++) {
        all += weights[h] * outcome[h];
        mended += weights[h] * outcome[h] * mends[h];
      }
      if (all > 0) {
        left += mended * (1 - mended / all);
      }
    }
    return 1 - left / (chance * (1 - chance));
  }
}
