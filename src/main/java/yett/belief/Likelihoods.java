package yett.belief;

import java.util.ArrayList;
import java.util.List;

/** Chances of answers under each of some hypotheses: those of a lattice, or a few of them. */
final class Likelihoods {
  private final CausalModel model;
  private final int size;
  private final Mixture mixture;

  /** Sum of weight times chance over the outcomes of a check, under each hypothesis. */
  private interface Mixture {
    double[] of(CheckTable table, double[] weights);
  }

  private Likelihoods(CausalModel model, int size, Mixture mixture) {
    this.model = model;
    this.size = size;
    this.mixture = mixture;
  }

  static Likelihoods over(CausalModel model, Lattice lattice) {
    return new Likelihoods(model, lattice.size(), (table, w) -> table.mixed(lattice, w));
  }

  static Likelihoods over(CausalModel model, int[][] sets) {
    return new Likelihoods(model, sets.length, (table, w) -> table.mixed(sets, w));
  }

  /**
   * Chance of an observation under each hypothesis, given the others that share its subject.
   *
   * @param sameThing observations of checks that repeat, or are repeated by, this one
   */
  double[] of(Observation observation, List<Observation> sameThing) {
    if (sameThing.isEmpty() && !model.shared(observation.check())) {
      return mix(observation);
    }
    List<Observation> all = new ArrayList<>(sameThing);
    all.add(observation);
    double[] joint = joint(model.original(observation.check()), all);
    if (sameThing.isEmpty()) {
      return joint;
    }
    double[] before = joint(model.original(observation.check()), sameThing);
    for (int h = 0; h < joint.length; h++) {
      joint[h] = before[h] > 0 ? joint[h] / before[h] : 0;
    }
    return joint;
  }

  private double[] mix(Observation observation) {
    double[] weights = observation.weights().stream().mapToDouble(Double::doubleValue).toArray();
    return mixture.of(model.table(observation.check()), weights);
  }

  /** Sum over outcomes a of the original: w(a) P(a) prod_j (s_j w_j(a) + (1 - s_j) L_j). */
  private double[] joint(String original, List<Observation> observations) {
    CheckTable table = model.table(original);
    double[] joint = new double[size];
    List<double[]> alone = new ArrayList<>();
    for (Observation o : observations) {
      alone.add(o.check().equals(original) ? null : mix(o));
    }
    for (int a = 0; a < table.outcomes(); a++) {
      double[] sure = new double[table.outcomes()];
      sure[a] = 1;
      double[] term = mixture.of(table, sure);
      for (int i = 0; i < observations.size(); i++) {
        multiply(term, observations.get(i), a, alone.get(i));
      }
      for (int h = 0; h < joint.length; h++) {
        joint[h] += term[h];
      }
    }
    return joint;
  }

  private void multiply(double[] term, Observation observation, int outcome, double[] alone) {
    Repetition repetition = model.repetition(observation.check());
    if (repetition == null) {
      double weight = observation.weights().get(outcome);
      for (int h = 0; h < term.length; h++) {
        term[h] *= weight;
      }
      return;
    }
    int own = repetition.outcomes()[outcome];
    double share = own < 0 ? 0 : repetition.share();
    double copied = own < 0 ? 0 : share * observation.weights().get(own);
    for (int h = 0; h < term.length; h++) {
      term[h] *= copied + (1 - share) * alone[h];
    }
  }
}
