package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The chances of answers under each of some hypotheses: those of a lattice, or a selection. */
final class Likelihoods {
  private final CausalModel model;
  private final EffectsSeen effects;
  private final int size;

  /** Sum of weight times chance over the outcomes of a check, under each hypothesis. */
  private final BiFunction<CheckTable, double[], double[]> mixture;

  /** Chance of each outcome of a check, under each hypothesis. */
  private final Function<CheckTable, double[][]> outcomes;

  private Likelihoods(
      CausalModel model,
      EffectsSeen effects,
      int size,
      BiFunction<CheckTable, double[], double[]> mixture,
      Function<CheckTable, double[][]> outcomes) {
    this.model = model;
    this.effects = effects;
    this.size = size;
    this.mixture = mixture;
    this.outcomes = outcomes;
  }

  static Likelihoods over(CausalModel model, EffectsSeen effects, Lattice lattice) {
    return new Likelihoods(
        model,
        effects,
        lattice.size(),
        (t, w) -> t.mixed(lattice, w),
        t -> t.outcomeChances(lattice));
  }

  static Likelihoods over(CausalModel model, EffectsSeen effects, int[][] sets) {
    return new Likelihoods(
        model, effects, sets.length, (t, w) -> t.mixed(sets, w), t -> t.outcomeChances(sets));
  }

  /**
   * Chance of an observation under each hypothesis, given earlier ones about the same subject.
   *
   * @param before observations of this check and of checks that repeat it or that it repeats, in
   *     one list for each time between two repairs; the last list is the present one. A machine
   *     that no repair has changed shows the same again with chance {@link Repetition#AGAIN}.
   */
  double[] of(Observation observation, List<List<Observation>> before) {
    if (isAlone(observation.check(), before)) {
      return mix(observation);
    }
    return new Subject(observation.check(), before).chance(observation);
  }

  /**
   * Chance of each outcome of a check under each hypothesis, given earlier observations of the same
   * subject.
   *
   * @return by outcome, then by hypothesis
   */
  double[][] outcomes(String check, List<List<Observation>> before) {
    CheckTable table = effects.table(check);
    if (isAlone(check, before)) {
      return outcomes.apply(table);
    }
    Subject subject = new Subject(check, before);
    double[][] chances = new double[table.outcomes()][];
    Arrays.setAll(chances, y -> subject.chance(Observation.of(check, y, chances.length)));
    return chances;
  }

  private boolean isAlone(String check, List<List<Observation>> before) {
    return !model.shared(check) && before.stream().allMatch(List::isEmpty);
  }

  /** Joint chance of several observations of one machine in one state, under each hypothesis. */
  double[] together(List<Observation> observations) {
    Map<String, List<Observation>> bySubject =
        observations.stream().collect(Collectors.groupingBy(o -> model.original(o.check())));
    double[] together = ones();
    bySubject.forEach(
        (original, same) -> {
          double[] joint = new Subject(original, List.of(same)).before;
          Arrays.setAll(together, h -> together[h] * joint[h]);
        });
    return together;
  }

  private double[] mix(Observation observation) {
    double[] weights = observation.weights().stream().mapToDouble(Double::doubleValue).toArray();
    return mixture.apply(effects.table(observation.check()), weights);
  }

  private double[] ones() {
    double[] ones = new double[size];
    Arrays.fill(ones, 1);
    return ones;
  }

  /**
   * The observations of one subject: a check and its repetitions. The joint chance is the sum over
   * outcomes a of the original of P(a) prod_k F_k(a), with F(a) = prod_j (s_j w_j(a) + (1 - s_j)
   * L_j) for the observations between two repairs; after the first repair g F(a) + (1 - g) sum_b
   * P(b) F(b), with g the chance to show the same again.
   */
  private final class Subject {
    private final String original;
    private final double[][] chances;

    /**
     * By outcome of the original and hypothesis, the factor of the observations before the last
     * repair.
     */
    private final double[][] earlier;

    private final List<Observation> today;

    /** Joint chance of all observations, by hypothesis. */
    private final double[] before;

    Subject(String check, List<List<Observation>> seen) {
      original = model.original(check);
      chances = outcomes.apply(effects.table(original));
      today = seen.get(seen.size() - 1);
      double[][] terms = new double[0][];
      for (List<Observation> between : seen.subList(0, seen.size() - 1)) {
        terms = with(terms, between);
      }
      earlier = terms;
      before = joint(today);
    }

    double[] chance(Observation next) {
      List<Observation> all = new ArrayList<>(today);
      all.add(next);
      double[] chance = joint(all);
      for (int h = 0; h < size; h++) {
        chance[h] = before[h] > 0 ? chance[h] / before[h] : 0;
      }
      return chance;
    }

    /** Joint chance of what was seen before and of these. */
    private double[] joint(List<Observation> observations) {
      return earlier.length == 0 && observations.size() == 1
          ? joint(observations.get(0))
          : sum(with(earlier, observations));
    }

    /** Of a single one: the same sums without keeping their terms. */
    private double[] joint(Observation observation) {
      double[] alone = observation.check().equals(original) ? null : mix(observation);
      double[] sum = new double[size];
      for (int a = 0; a < chances.length; a++) {
        add(sum, chances[a], observation, a, alone);
      }
      return sum;
    }

    private void add(
        double[] sum, double[] chance, Observation observation, int outcome, double[] alone) {
      Repetition repetition = model.repetition(observation.check());
      if (repetition == null) {
        double weight = observation.weights().get(outcome);
        for (int h = 0; weight != 0 && h < sum.length; h++) {
          sum[h] += chance[h] * weight;
        }
        return;
      }
      int own = repetition.outcomes()[outcome];
      double share = own < 0 ? 0 : repetition.share();
      double copied = own < 0 ? 0 : share * observation.weights().get(own);
      for (int h = 0; h < sum.length; h++) {
        sum[h] += chance[h] * (copied + (1 - share) * alone[h]);
      }
    }

    /** What was seen before, by outcome and hypothesis, with what was seen after a repair. */
    private double[][] with(double[][] terms, List<Observation> between) {
      if (between.isEmpty()) {
        return terms;
      }
      double[][] factors = factors(between);
      if (terms.length > 0) {
        double[] anew = sum(factors);
        for (int a = 0; a < factors.length; a++) {
          for (int h = 0; h < size; h++) {
            double shown = Repetition.AGAIN * factors[a][h] + (1 - Repetition.AGAIN) * anew[h];
            factors[a][h] = terms[a][h] * shown;
          }
        }
      }
      return factors;
    }

    /** By outcome of the original and hypothesis, the chance of these observations. */
    private double[][] factors(List<Observation> observations) {
      double[][] factors = new double[chances.length][];
      Arrays.setAll(factors, a -> ones());
      for (Observation observation : observations) {
        double[] alone = observation.check().equals(original) ? null : mix(observation);
        for (int a = 0; a < factors.length; a++) {
          multiply(factors[a], observation, a, alone);
        }
      }
      return factors;
    }

    private double[] sum(double[][] terms) {
      if (terms.length == 0) {
        return ones();
      }
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
}
