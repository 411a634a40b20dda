package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
   * @param before observations of checks that repeat, or are repeated by, this one, by the repairs
   *     between them; the last list is that of today. A machine that no repair has changed shows
   *     the same again with chance {@link Repetition#AGAIN}.
   */
  double[] of(Observation observation, List<List<Observation>> before) {
    boolean first = before.stream().allMatch(List::isEmpty);
    if (first && !model.shared(observation.check())) {
      return mix(observation);
    }
    String original = model.original(observation.check());
    List<List<Observation>> all = new ArrayList<>(before.subList(0, before.size() - 1));
    List<Observation> now = new ArrayList<>(before.get(before.size() - 1));
    now.add(observation);
    all.add(now);
    double[] joint = joint(original, all);
    if (first) {
      return joint;
    }
    double[] without = joint(original, before);
    for (int h = 0; h < joint.length; h++) {
      joint[h] = without[h] > 0 ? joint[h] / without[h] : 0;
    }
    return joint;
  }

  /** Chance of all of some observations, made of one machine in one state. */
  double[] together(List<Observation> observations) {
    Map<String, List<Observation>> bySubject =
        observations.stream().collect(Collectors.groupingBy(o -> model.original(o.check())));
    double[] together = ones();
    bySubject.forEach(
        (original, same) -> {
          double[] joint = joint(original, List.of(same));
          Arrays.setAll(together, h -> together[h] * joint[h]);
        });
    return together;
  }

  private double[] mix(Observation observation) {
    double[] weights = observation.weights().stream().mapToDouble(Double::doubleValue).toArray();
    return mixture.of(model.table(observation.check()), weights);
  }

  /**
   * Sum over outcomes a of the original: P(a) prod_k F_k(a), F(a) = prod_j (s_j w_j(a) + (1 - s_j)
   * L_j) for the observations between two repairs; after the first repair g F(a) + (1 - g) sum_b
   * P(b) F(b), with g the chance to show the same again.
   */
  private double[] joint(String original, List<List<Observation>> observations) {
    CheckTable table = model.table(original);
    double[][] chances = new double[table.outcomes()][];
    for (int a = 0; a < chances.length; a++) {
      double[] sure = new double[table.outcomes()];
      sure[a] = 1;
      chances[a] = mixture.of(table, sure);
    }
    double[][] terms = null;
    for (List<Observation> between : observations) {
      if (!between.isEmpty()) {
        double[][] factors = factors(original, between, chances.length);
        terms = terms == null ? factors : again(terms, factors, chances);
      }
    }
    return terms == null ? ones() : sum(terms, chances);
  }

  private double[] ones() {
    double[] ones = new double[size];
    Arrays.fill(ones, 1);
    return ones;
  }

  /** By outcome of the original and by hypothesis, the chance of some answers. */
  private double[][] factors(String original, List<Observation> observations, int outcomes) {
    double[][] factors = new double[outcomes][];
    Arrays.setAll(factors, a -> ones());
    for (Observation observation : observations) {
      double[] alone = observation.check().equals(original) ? null : mix(observation);
      for (int a = 0; a < outcomes; a++) {
        multiply(factors[a], observation, a, alone);
      }
    }
    return factors;
  }

  private double[][] again(double[][] terms, double[][] factors, double[][] chances) {
    double[] anew = sum(factors, chances);
    for (int a = 0; a < terms.length; a++) {
      for (int h = 0; h < size; h++) {
        terms[a][h] *= Repetition.AGAIN * factors[a][h] + (1 - Repetition.AGAIN) * anew[h];
      }
    }
    return terms;
  }

  private double[] sum(double[][] terms, double[][] chances) {
    double[] sum = new double[size];
    for (int a = 0; a < terms.length; a++) {
      for (int h = 0; h < size; h++) {
        sum[h] += chances[a][h] * terms[a][h];
      }
    }
    return sum;
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
