package yett.plan;

import java.util.Optional;

/**
 * Measure, then repair: whether a repair that would come next stands on suspicion, and which open
 * check would confirm or clear it first. The search alone weighs minutes, and a cheap part on a
 * suspicion of a half can be the shortest way on average; but it disturbs the gate, hides what was
 * wrong, and people stop trusting whoever fits one part after the other.
 */
final class Confirming {
  /** From this chance on that a repair mends something, it needs no more confirming. */
  static final double SURE = 0.8;

  /** A check confirms if it takes away such a share of the doubt, on average. */
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
   * The check to make before a repair: of those that take away enough of the doubt and cost no more
   * than the repair with its try, the one that takes away most for its cost.
   *
   * @param repair number of the repair in the scene
   * @return number of the check; empty if the repair is sure enough, or nothing could tell
   */
  Optional<Integer> before(int repair) {
    Scene.Job job = scene.repairs().get(repair);
    return before(repair, mends(ofItsOwn(job))).or(() -> before(repair, mends(job.removes())));
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
      double taken = taken(look, mends, chance);
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

  /** By hypothesis, the chance that some cause that is there is removed. */
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
   * By cause, the chance that a repair removes it, as far as nothing cheaper would as surely: new
   * batteries put flat ones right too, and so does charging them.
   */
  private double[] ofItsOwn(Scene.Job job) {
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

  /** Share of the doubt p (1 - p) that a check takes away on average. */
  private double taken(Scene.Look look, double[] mends, double chance) {
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
