package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The probability of every set of causes, given all answers and repairs. Immutable.
 *
 * <p>A hypothesis is the set of causes present at the call-out; repairs take causes away, so each
 * entry also holds the set that remains. Inference over the listed sets, the most probable ones at
 * the outset, is exact; {@link #neglected()} gives the prior chance of the others.
 */
public final class Belief {
  /** Largest prior chance of the sets that are left out. */
  public static final double NEGLECT_AT_MOST = 0.01;

  private static final int MOST_HYPOTHESES = 90_000;
  private static final int FEW_HYPOTHESES = 4_000;

  private final CausalModel model;
  private final Lattice lattice;
  private final EffectsSeen effects;
  private final Likelihoods likelihoods;
  private final Marginals marginals;
  private final double neglected;
  private final int[] initial;

  /** The sets that remained when the gate was last tried. */
  private final int[] tried;

  private final int[] current;
  private final double[] weights;
  private final double logEvidence;

  /**
   * Answers in their order, in one list for each time between two repairs; the last list is the
   * present one.
   */
  private final List<List<Observation>> seen;

  /** Worked out at first use, because they are often asked for. */
  private volatile double[] atCallOut;

  private volatile double[] remaining;

  private volatile Map<String, List<List<Observation>>> bySubject;
  private volatile Shares untouched;

  /** For each set of a support, the share of it in which no repair has changed anything. */
  private record Shares(Support of, double[] shares) {}

  private Belief(
      CausalModel model,
      Lattice lattice,
      EffectsSeen effects,
      Marginals marginals,
      double neglected,
      int[] initial,
      int[] tried,
      int[] current,
      double[] weights,
      double logEvidence,
      List<List<Observation>> seen) {
    this.model = model;
    this.lattice = lattice;
    this.effects = effects;
    this.likelihoods = Likelihoods.over(model, effects, lattice);
    this.marginals = marginals;
    this.neglected = neglected;
    this.initial = initial;
    this.tried = tried;
    this.current = current;
    this.weights = weights;
    this.logEvidence = logEvidence;
    this.seen = seen;
  }

  /**
   * The belief when a gate is reported and nothing else is known: at least one cause is present.
   * The most probable sets are listed until those left out are below {@link #NEGLECT_AT_MOST}, or
   * until more would be too slow.
   *
   * @throws IllegalArgumentException if no cause has any chance
   */
  public static Belief atReport(CausalModel model) {
    return atReport(model, NEGLECT_AT_MOST, MOST_HYPOTHESES);
  }

  /** The same, for whoever lists the beliefs of many gates. */
  static Belief atReport(CausalModel model, Likely likely) {
    return start(
        model, Enumeration.mostProbable(model, NEGLECT_AT_MOST, MOST_HYPOTHESES, likely), true);
  }

  /**
   * A faster, less exact belief at the report, with far fewer sets: good for whether a chance
   * changes, not by how much.
   */
  public static Belief roughly(CausalModel model) {
    return atReport(model, NEGLECT_AT_MOST, FEW_HYPOTHESES);
  }

  static Belief atReport(CausalModel model, double leftOut, int most) {
    return start(model, Enumeration.mostProbable(model, leftOut, most), true);
  }

  /** The belief at the report over all sets of at most {@code depth} causes. */
  public static Belief atReport(CausalModel model, int depth) {
    return start(model, Lattice.of(model.size(), depth), true);
  }

  /**
   * The belief of the model before a fault is reported, over sets of at most {@code depth} causes.
   */
  public static Belief prior(CausalModel model, int depth) {
    return start(model, Lattice.of(model.size(), depth), false);
  }

  private static Belief start(CausalModel model, Lattice lattice, boolean someCause) {
    double[] weights = model.priors(lattice);
    double listed = Arrays.stream(weights).sum();
    double possible = 1;
    if (someCause) {
      listed -= weights[0];
      possible -= weights[0];
      weights[0] = 0;
    }
    if (!(possible > 0)) {
      throw new IllegalArgumentException("no cause of the model has any chance");
    }
    for (int h = 0; h < weights.length && listed > 0; h++) {
      weights[h] /= listed;
    }
    int[] all = IntStream.range(0, lattice.size()).toArray();
    return new Belief(
        model,
        lattice,
        EffectsSeen.none(model),
        new Marginals(model, lattice),
        Math.max(0, 1 - listed / possible),
        all,
        all,
        all,
        weights,
        0,
        List.of(List.of()));
  }

  /**
   * The belief after an observation.
   *
   * @throws ImpossibleEvidence if no enumerated set of causes allows it
   */
  public Belief learn(Observation observation) {
    double[] next = given(observation);
    List<Observation> today = new ArrayList<>(seen.get(seen.size() - 1));
    today.add(observation);
    List<List<Observation>> all = new ArrayList<>(seen.subList(0, seen.size() - 1));
    all.add(List.copyOf(today));
    return scaled(
        initial,
        tried,
        current,
        next,
        afterSeeing(observation),
        List.copyOf(all),
        observation.check());
  }

  /** The effects after an observation. A repeated observation says nothing new about them. */
  private EffectsSeen afterSeeing(Observation observation) {
    boolean known = !today(sameThing(observation.check())).get(0).isEmpty();
    return known ? effects : effects.after(observation);
  }

  /** The weights times the chance of an observation if it were made now. */
  private double[] given(Observation observation) {
    List<List<Observation>> before = sameThing(observation.check());
    double[] likelihood = likelihoods.brief(observation, today(before));
    double[] given = new double[weights.length];
    if (isAsReported()) {
      for (int i = 0; i < given.length; i++) {
        given[i] = weights[i] * likelihood[i];
      }
      return given;
    }
    double[] same = again(before) ? likelihoods.of(observation, before) : likelihood;
    for (int i = 0; i < given.length; i++) {
      given[i] = weights[i] * (untouched(i) ? same : likelihood)[current[i]];
    }
    return given;
  }

  /** Whether nothing was repaired yet: then each set of the lattice stands at its own place. */
  private boolean isAsReported() {
    return initial == current;
  }

  /** Whether no repair has changed anything, so that a check made again shows the same. */
  private boolean untouched(int i) {
    return initial[i] == current[i];
  }

  /**
   * Answers to checks that this one repeats or that repeat it, in one list for each time between
   * two repairs.
   */
  private List<List<Observation>> sameThing(String check) {
    String original = model.original(check);
    List<List<Observation>> same = new ArrayList<>(seen.size());
    for (List<Observation> between : seen) {
      List<Observation> some = List.of();
      for (Observation observation : between) {
        if (model.original(observation.check()).equals(original)) {
          some = some.isEmpty() ? new ArrayList<>() : some;
          some.add(observation);
        }
      }
      same.add(some);
    }
    return same;
  }

  /** The same for whoever asks of many checks. */
  private List<List<Observation>> sameThingOfMany(String check) {
    Map<String, List<List<Observation>>> known = bySubject;
    if (known == null) { // worked out twice at the worst
      known = new HashMap<>();
      for (List<Observation> between : seen) {
        for (Observation observation : between) {
          String original = model.original(observation.check());
          if (!known.containsKey(original)) {
            known.put(original, sameThing(original));
          }
        }
      }
      bySubject = known;
    }
    List<List<Observation>> same = known.get(model.original(check));
    return same == null ? Collections.nCopies(seen.size(), List.of()) : same;
  }

  private static List<List<Observation>> today(List<List<Observation>> before) {
    return before.subList(before.size() - 1, before.size());
  }

  /** Whether some of these answers were given before the last repair. */
  private static boolean again(List<List<Observation>> before) {
    for (int i = 0; i < before.size() - 1; i++) {
      if (!before.get(i).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private Belief scaled(
      int[] nextInitial,
      int[] nextTried,
      int[] nextCurrent,
      double[] next,
      EffectsSeen nextEffects,
      List<List<Observation>> seen,
      String what) {
    double total = sum(next);
    if (!(total > 0)) {
      throw new ImpossibleEvidence(what);
    }
    for (int i = 0; i < next.length; i++) {
      next[i] /= total;
    }
    return new Belief(
        model,
        lattice,
        nextEffects,
        marginals,
        neglected,
        nextInitial,
        nextTried,
        nextCurrent,
        next,
        logEvidence + Math.log(total),
        seen);
  }

  /**
   * The belief after a repair, before the retest.
   *
   * @param removes cause to the chance that the repair removed it
   */
  public Belief repaired(Map<String, Double> removes) {
    Remainders left = new Remainders(model, lattice, removes, weights.length);
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        left.add(initial[i], tried[i], current[i], weights[i]);
      }
    }
    List<List<Observation>> all = new ArrayList<>(seen);
    all.add(List.of());
    return scaled(
        left.initial(),
        left.tried(),
        left.current(),
        left.weights(),
        EffectsSeen.none(model),
        List.copyOf(all),
        "repair");
  }

  /**
   * The belief after the gate was tried. A remaining cause shows the same complaints as before: if
   * a gate with complaint c had causes R and now has S, it shows c again with chance P(c | S) / P(c
   * | R), as far as it repeats itself at all ({@link Repetition#AGAIN}).
   *
   * @param fails for each cause, in the model's order, the chance that it shows at a try while it
   *     remains
   */
  public Belief retested(Retest retest, double[] fails) {
    List<double[]> shown =
        retest.told().stream().map(c -> likelihoods.together(List.of(c))).toList();
    double[] next = weights.clone();
    double[] again = new double[shown.size()];
    int[] members = new int[lattice.depth()];
    for (int i = 0; i < next.length; i++) {
      if (next[i] > 0) {
        for (int c = 0; c < again.length; c++) {
          again[c] = again(shown.get(c)[tried[i]], shown.get(c)[current[i]]);
        }
        next[i] *= retest.chance(1 - works(current[i], fails, members), again);
      }
    }
    return scaled(initial, current, current, next, effects, seen, "retest");
  }

  /** Chance that no cause of a set shows at a try. */
  private double works(int set, double[] fails, int[] members) {
    double works = 1 - Retest.SLIP;
    int count = lattice.members(set, members);
    for (int k = 0; k < count; k++) {
      works *= 1 - fails[model.told(members[k])];
    }
    return works;
  }

  private static double again(double before, double now) {
    double kept = before > 0 ? Math.min(1, now / before) : 0;
    return Repetition.AGAIN * kept + (1 - Repetition.AGAIN) * now;
  }

  /** Chance that each cause was present at the call-out, in the model's order. */
  public double[] atCallOut() {
    double[] known = atCallOut;
    if (known == null) { // worked out twice at the worst
      known = marginals.of(together(initial));
      atCallOut = known;
    }
    return known.clone();
  }

  /**
   * Chance that each cause was present at the call-out and had not been brought about by another,
   * see {@link Marginals}.
   *
   * @return in the model's order; never more than {@link #atCallOut()}
   */
  public double[] arisenByItself() {
    double[] there = atCallOut();
    double[] chances = marginals.arisen(isAsReported() ? weights : together(initial), there);
    // Kinds of one cause count once; and rounding makes nothing negative.
    Arrays.setAll(chances, c -> Math.max(0, Math.min(there[c], chances[c])));
    return chances;
  }

  /** Chance that each cause is present now, in the model's order. */
  public double[] remaining() {
    if (current == initial) {
      return atCallOut();
    }
    double[] known = remaining;
    if (known == null) { // worked out twice at the worst
      known = marginals.of(together(current));
      remaining = known;
    }
    return known.clone();
  }

  /** The total weight of each set of the lattice, for a moment: until this thread asks again. */
  private double[] together(int[] sets) {
    double[] together = Scratch.ofThisThread().numbers(lattice.size());
    if (isAsReported()) {
      System.arraycopy(weights, 0, together, 0, weights.length);
      return together;
    }
    Arrays.fill(together, 0, lattice.size(), 0);
    for (int i = 0; i < weights.length; i++) {
      together[sets[i]] += weights[i];
    }
    return together;
  }

  /** Chance that a cause was present at the call-out. */
  public double atCallOut(String cause) {
    return atCallOut()[model.indexOf(cause)];
  }

  /** Chance of each outcome of a check if it were made now. */
  public double[] predict(String check) {
    int outcomes = model.table(check).outcomes();
    double[] chances = new double[outcomes];
    for (int y = 0; y < outcomes; y++) {
      chances[y] = chanceOf(Observation.of(check, y, outcomes));
    }
    return chances;
  }

  /** Chance of an observation if it were made now. */
  public double chanceOf(Observation observation) {
    if (!isAsReported()) {
      return sum(given(observation));
    }
    double[] likelihood = likelihoods.brief(observation, today(sameThing(observation.check())));
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * likelihood[i];
    }
    return sum;
  }

  /** A loop: there are thousands of values, and a stream takes several times as long. */
  private static double sum(double[] numbers) {
    double sum = 0;
    for (double number : numbers) {
      sum += number;
    }
    return sum;
  }

  /**
   * The most probable remaining sets, for planning.
   *
   * @param mass share of the probability that they should cover
   * @param most how many there may be
   */
  public Support support(double mass, int most) {
    return Support.of(lattice, current, weights, mass, most);
  }

  /** The most probable sets of causes at the call-out, as positions with their chance. */
  public List<Explanation> explanations(int most) {
    return Support.of(lattice, initial, weights, 1, lattice.size()).explanations(model).stream()
        .limit(most)
        .toList();
  }

  /** A set of causes with its probability. */
  public record Explanation(List<String> causes, double chance) {}

  /**
   * Chance of each outcome of a check, if it were made now, under each set of a support.
   *
   * @return by outcome, then by set
   */
  public double[][] predict(String check, Support support) {
    List<List<Observation>> before = sameThingOfMany(check);
    Likelihoods few = Likelihoods.over(model, effects, support.sets());
    double[][] chances = few.outcomes(check, today(before));
    if (again(before)) {
      double[][] same = few.outcomes(check, before);
      double[] share = untouched(support);
      for (int y = 0; y < chances.length; y++) {
        for (int h = 0; h < share.length; h++) {
          chances[y][h] += share[h] * (same[y][h] - chances[y][h]);
        }
      }
    }
    return chances;
  }

  /** For each set of a support, the share of it in which no repair has changed anything. */
  private double[] untouched(Support support) {
    Shares known = untouched;
    if (known == null || known.of() != support) {
      known = new Shares(support, workedOut(support));
      untouched = known;
    }
    return known.shares();
  }

  private double[] workedOut(Support support) {
    double[] all = new double[lattice.size()];
    double[] same = new double[lattice.size()];
    for (int i = 0; i < weights.length; i++) {
      all[current[i]] += weights[i];
      same[current[i]] += untouched(i) ? weights[i] : 0;
    }
    return support.shares(same, all);
  }

  /**
   * Whether a check could tell sets of a support apart at all: one of their causes has a row on it,
   * or on a check that it repeats or that repeats it.
   *
   * @param causes for each cause of the model, whether it is in a set of the support
   */
  public boolean couldTell(String check, boolean[] causes) {
    return model.shared(check) || model.table(check).shows(causes);
  }

  /** Natural logarithm of the probability of all observations. */
  public double logEvidence() {
    return logEvidence;
  }

  /** Prior chance of the sets that are not listed. */
  public double neglected() {
    return neglected;
  }

  /** Size of the largest listed sets. */
  public int depth() {
    return lattice.depth();
  }

  /** Number of listed sets. */
  public int hypotheses() {
    return lattice.size();
  }

  public CausalModel model() {
    return model;
  }

  Lattice lattice() {
    return lattice;
  }
}
