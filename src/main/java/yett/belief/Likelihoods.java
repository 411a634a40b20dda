package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /** The same for a moment, see {@link #brief}. */
  private final BiFunction<CheckTable, List<Double>, double[]> alone;

  /** Chance of each outcome of a check, under each hypothesis. */
  private final Function<CheckTable, double[][]> outcomes;

  /** Chance of several outcomes at once, under each hypothesis. */
  private final BiFunction<CheckTable, Observation.Ticks, double[]> several;

  private Likelihoods(
      CausalModel model,
      EffectsSeen effects,
      int size,
      BiFunction<CheckTable, double[], double[]> mixture,
      BiFunction<CheckTable, List<Double>, double[]> alone,
      Function<CheckTable, double[][]> outcomes,
      BiFunction<CheckTable, Observation.Ticks, double[]> several) {
    this.model = model;
    this.effects = effects;
    this.size = size;
    this.mixture = mixture;
    this.alone = alone;
    this.outcomes = outcomes;
    this.several = several;
  }

  static Likelihoods over(CausalModel model, EffectsSeen effects, Lattice lattice) {
    return new Likelihoods(
        model,
        effects,
        lattice.size(),
        (t, w) -> t.mixed(lattice, w),
        (t, w) -> Scratch.ofThisThread().likelihood(t, lattice, w),
        t -> t.outcomeChances(lattice),
        (t, s) -> t.several(lattice, s));
  }

  static Likelihoods over(CausalModel model, EffectsSeen effects, int[][] sets) {
    return new Likelihoods(
        model,
        effects,
        sets.length,
        (t, w) -> t.mixed(sets, w),
        (t, w) -> t.mixed(sets, numbers(w)),
        t -> t.outcomeChances(sets),
        (t, s) -> t.several(sets, s));
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
   * The same, for a moment: the array is not to be changed and holds until this thread asks again.
   */
  double[] brief(Observation observation, List<List<Observation>> before) {
    return observation.ticks().isEmpty() && isAlone(observation.check(), before)
        ? alone.apply(effects.table(observation.check()), observation.weights())
        : of(observation, before);
  }

  /**
   * Chance of each outcome of a check under each hypothesis, given earlier observations of the same
   * subject.
   *
   * @return by outcome, then by hypothesis
   */
  double[][] outcomes(String check, List<List<Observation>> before) {
    CheckTable table = effects.table(check);
    if (isFirst(before) && model.repetition(check) == null) {
      return outcomes.apply(table);
    }
    Subject subject = new Subject(check, before);
    double[][] chances = new double[table.outcomes()][];
    Arrays.setAll(chances, y -> subject.chance(Observation.of(check, y, chances.length)));
    return chances;
  }

  private boolean isAlone(String check, List<List<Observation>> before) {
    return !model.shared(check) && isFirst(before);
  }

  private static boolean isFirst(List<List<Observation>> before) {
    for (List<Observation> between : before) {
      if (!between.isEmpty()) {
        return false;
      }
    }
    return true;
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
    CheckTable table = effects.table(observation.check());
    double[] mixed = mixture.apply(table, numbers(observation.weights()));
    if (observation.ticks().isPresent()) {
      double[] shows = shows(observation);
      double[] besides = besides(observation, shows);
      for (int h = 0; h < size; h++) {
        mixed[h] = Math.max(0, mixed[h] + shows[h] * besides[h]);
      }
    }
    return mixed;
  }

  /**
   * What the other ticks add to the weight of the outcome that shows, under each hypothesis: how
   * far the chance that something contributes them all, if that outcome shows, is below 1. Null
   * where only one outcome was seen.
   */
  private double[] besides(Observation observation) {
    return observation.ticks().isEmpty() ? null : besides(observation, shows(observation));
  }

  /** Chance that the highest of several outcomes shows, under each hypothesis. */
  private double[] shows(Observation observation) {
    int highest = observation.ticks().get().highest();
    return outcomes.apply(effects.table(observation.check()))[highest];
  }

  private double[] besides(Observation observation, double[] shows) {
    Observation.Ticks ticks = observation.ticks().get();
    double[] together = several.apply(effects.table(observation.check()), ticks);
    for (int h = 0; h < size; h++) {
      double all = shows[h] > 0 ? Math.min(1, together[h] / shows[h]) : 0;
      together[h] = ticks.counts() * (all - 1);
    }
    return together;
  }

  private static double[] numbers(List<Double> weights) {
    return weights.stream().mapToDouble(Double::doubleValue).toArray();
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
   * P(b) F(b), with g the chance to show the same again. Of several outcomes seen at once, w_j(o)
   * of the highest is multiplied by the chance that something contributes the others too.
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

    /** Whether several outcomes were seen at once before. */
    private final boolean ticked;

    /** Joint chance of all observations, by hypothesis. */
    private final double[] before;

    Subject(String check, List<List<Observation>> seen) {
      original = model.original(check);
      chances = outcomes.apply(effects.table(original));
      List<List<Observation>> told = firstTicksOnly(seen);
      today = told.get(told.size() - 1);
      ticked = told.stream().flatMap(List::stream).anyMatch(o -> o.ticks().isPresent());
      double[][] terms = new double[0][];
      for (List<Observation> between : told.subList(0, told.size() - 1)) {
        terms = with(terms, between);
      }
      earlier = terms;
      before = joint(today);
    }

    /** Of the same subject, what is seen besides counts once: it is one piece of evidence. */
    private List<List<Observation>> firstTicksOnly(List<List<Observation>> seen) {
      List<List<Observation>> told = new ArrayList<>();
      boolean known = false;
      for (List<Observation> between : seen) {
        List<Observation> some = new ArrayList<>(between.size());
        for (Observation observation : between) {
          some.add(known ? observation.with(Optional.empty()) : observation);
          known |= observation.ticks().isPresent();
        }
        told.add(some);
      }
      return told;
    }

    double[] chance(Observation next) {
      List<Observation> all = new ArrayList<>(today);
      all.add(ticked ? next.with(Optional.empty()) : next);
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
      double[] besides = besides(observation);
      double[] sum = new double[size];
      for (int a = 0; a < chances.length; a++) {
        add(sum, chances[a], observation, a, alone, besides);
      }
      return sum;
    }

    private void add(
        double[] sum,
        double[] chance,
        Observation observation,
        int outcome,
        double[] alone,
        double[] besides) {
      Repetition repetition = model.repetition(observation.check());
      if (repetition == null) {
        double weight = observation.weights().get(outcome);
        double[] more = ofHighest(observation, outcome, besides);
        for (int h = 0; weight != 0 && h < sum.length; h++) {
          sum[h] += chance[h] * (more == null ? weight : weight + more[h]);
        }
        return;
      }
      int own = repetition.outcomes()[outcome];
      double share = own < 0 ? 0 : repetition.share();
      double copied = own < 0 ? 0 : share * observation.weights().get(own);
      double[] more = ofHighest(observation, own, besides);
      for (int h = 0; h < sum.length; h++) {
        double again = more == null ? copied : copied + share * more[h];
        sum[h] += chance[h] * (again + (1 - share) * alone[h]);
      }
    }

    /** What was seen besides counts with the highest outcome; null for all others. */
    private double[] ofHighest(Observation observation, int outcome, double[] besides) {
      return besides != null && observation.ticks().get().highest() == outcome ? besides : null;
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
        double[] besides = besides(observation);
        for (int a = 0; a < factors.length; a++) {
          multiply(factors[a], observation, a, alone, besides);
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

    private void multiply(
        double[] term, Observation observation, int outcome, double[] alone, double[] besides) {
      Repetition repetition = model.repetition(observation.check());
      if (repetition == null) {
        double weight = observation.weights().get(outcome);
        double[] more = ofHighest(observation, outcome, besides);
        for (int h = 0; h < term.length; h++) {
          term[h] *= more == null ? weight : weight + more[h];
        }
        return;
      }
      int own = repetition.outcomes()[outcome];
      double share = own < 0 ? 0 : repetition.share();
      double copied = own < 0 ? 0 : share * observation.weights().get(own);
      double[] more = ofHighest(observation, own, besides);
      for (int h = 0; h < term.length; h++) {
        double again = more == null ? copied : copied + share * more[h];
        term[h] *= again + (1 - share) * alone[h];
      }
    }
  }
}
