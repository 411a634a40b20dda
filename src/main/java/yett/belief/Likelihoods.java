package yett.belief;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Chances of answers under each of some hypotheses: those of a lattice, or a few of them. */
final class Likelihoods {
  private final CausalModel model;
  private final int size;
  private final Function<CheckTable, double[][]> chances;

  private Likelihoods(CausalModel model, int size, Function<CheckTable, double[][]> chances) {
    this.model = model;
    this.size = size;
    this.chances = chances;
  }

  static Likelihoods over(CausalModel model, Lattice lattice) {
    return new Likelihoods(model, lattice.size(), table -> table.outcomeChances(lattice));
  }

  static Likelihoods over(CausalModel model, int[][] sets) {
    return new Likelihoods(model, sets.length, table -> table.outcomeChances(sets));
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
    double[][] chances = table(observation.check());
    double[] mixed = new double[size];
    for (int y = 0; y < chances.length; y++) {
      double weight = observation.weights().get(y);
      if (weight > 0) {
        double[] row = chances[y];
        for (int h = 0; h < mixed.length; h++) {
          mixed[h] += weight * row[h];
        }
      }
    }
    return mixed;
  }

  /** Sum over outcomes a of the original: w(a) P(a) prod_j (s_j w_j(a) + (1 - s_j) L_j). */
  private double[] joint(String original, List<Observation> observations) {
    double[][] chances = table(original);
    double[] joint = new double[size];
    List<double[]> alone = new ArrayList<>();
    for (Observation o : observations) {
      alone.add(o.check().equals(original) ? null : mix(o));
    }
    double[] term = new double[size];
    for (int a = 0; a < chances.length; a++) {
      System.arraycopy(chances[a], 0, term, 0, term.length);
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

  private double[][] table(String check) {
    return chances.apply(model.table(check));
  }
}
