package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * The same mathematics in the plainest way, as a yardstick: every set of causes is an array of
 * booleans and every chance a product written out.
 */
final class PlainModel {
  /** A check; {@code original} is -1 unless it repeats another. */
  record Look(
      String id, double[] base, double[][] rows, int original, double share, int[] sameOutcomes) {}

  /** Something that moves the belief. */
  sealed interface Step {}

  record Answered(int look, double[] weights) implements Step {}

  record Mended(double[] removes) implements Step {}

  /**
   * How a try went.
   *
   * @param left of the complaints told, which are left; empty unless {@link Retest.How#SHOWED}
   */
  record Tried(Retest.How how, List<Answered> told, List<Boolean> left, double[] fails)
      implements Step {
    Tried(boolean cured, double[] fails) {
      this(cured ? Retest.How.RAN : Retest.How.FAILED, List.of(), List.of(), fails);
    }
  }

  /**
   * What was there at the call-out, at the last try and now, and how probable that is.
   *
   * @param tried what was there when the gate was last tried, or at the call-out
   */
  record World(boolean[] before, boolean[] tried, boolean[] now, double weight) {}

  final List<String> causes = new ArrayList<>();
  double[] priors;
  double[][] links;
  final List<Look> looks = new ArrayList<>();

  int size() {
    return causes.size();
  }

  static PlainModel random(SplittableRandom random, int mostCauses) {
    PlainModel plain = new PlainModel();
    int n = 2 + random.nextInt(mostCauses - 1);
    plain.priors = new double[n];
    plain.links = new double[n][n];
    int turn = random.nextInt(n);
    for (int c = 0; c < n; c++) {
      plain.causes.add("c" + c);
      plain.priors[c] = random.nextInt(8) == 0 ? 0 : Math.pow(random.nextDouble(), 3) * 0.5;
      for (int d = 0; d < n; d++) {
        // Along a turned order, so that links also lead back to causes listed before.
        if ((c + turn) % n < (d + turn) % n && random.nextInt(n) == 0) {
          plain.links[c][d] = random.nextInt(6) == 0 ? 1 : random.nextDouble();
        }
      }
    }
    plain.priors[random.nextInt(n)] = 0.2;
    int count = 2 + random.nextInt(5);
    for (int k = 0; k < count; k++) {
      plain.looks.add(plain.look(k, random));
    }
    return plain;
  }

  private Look look(int k, SplittableRandom random) {
    int outcomes = 2 + random.nextInt(3);
    double[][] rows = new double[size()][];
    for (int c = 0; c < size(); c++) {
      rows[c] = random.nextInt(3) == 0 ? row(outcomes, random) : null;
    }
    int original = k > 0 && random.nextInt(3) == 0 ? 0 : -1;
    int[] same = new int[original < 0 ? 0 : looks.get(0).base().length];
    for (int i = 0; i < same.length; i++) {
      same[i] = random.nextInt(outcomes + 1) - 1;
    }
    return new Look("k" + k, row(outcomes, random), rows, original, random.nextDouble(), same);
  }

  static double[] row(int outcomes, SplittableRandom random) {
    double[] row = new double[outcomes];
    double sum = 0;
    for (int i = 0; i < outcomes; i++) {
      row[i] = 0.01 + random.nextDouble();
      sum += row[i];
    }
    for (int i = 0; i < outcomes; i++) {
      row[i] /= sum;
    }
    return row;
  }

  /** The model of the cards, read from them once more. */
  static PlainModel of(RuleBase base) {
    PlainModel plain = new PlainModel();
    plain.causes.addAll(base.causes().keySet());
    int n;
    plain.priors = base.causes().values().stream().mapToDouble(Cause::prior).toArray();
    plain.expectFew();
    plain.addKinds(base);
    n = plain.size();
    plain.links = new double[n][n];
    for (Cause cause : base.causes().values()) {
      cause
          .consequences()
          .forEach(
              (to, chance) ->
                  plain.links[plain.causes.indexOf(cause.id())][plain.causes.indexOf(to)] = chance);
    }
    List<String> ids = List.copyOf(base.checks().keySet());
    for (Check check : base.checks().values()) {
      double[][] rows = new double[n][];
      check
          .likelihood()
          .forEach((cause, row) -> rows[plain.causes.indexOf(cause)] = plain.slipped(row));
      if (!check.danger() && check.kind() != Check.Kind.PROOF) {
        plain.unknown(base, check, rows);
      }
      int original = check.repeats().map(r -> ids.indexOf(r.check())).orElse(-1);
      int[] same =
          original < 0
              ? new int[0]
              : base.checks().get(ids.get(original)).outcomes().stream()
                  .mapToInt(o -> check.indexOf(o.id()))
                  .toArray();
      plain.looks.add(
          new Look(
              check.id(),
              plain.slipped(check.otherwise()),
              rows,
              original,
              check.repeats().map(Check.Repeats::share).orElse(0.0),
              same));
    }
    return plain;
  }

  /**
   * With every effect as a cause of its own without a prior, brought about by what leads to it. The
   * rows of a cause that come of its effects stand with the effects alone.
   */
  static PlainModel withEffects(RuleBase base) {
    PlainModel plain = new PlainModel();
    plain.causes.addAll(base.effects().keySet());
    plain.causes.addAll(base.causes().keySet());
    int n = plain.size();
    plain.priors = new double[n];
    plain.links = new double[n][n];
    for (Cause cause : base.causes().values()) {
      plain.priors[plain.causes.indexOf(cause.id())] = cause.prior();
      plain.link(cause.id(), cause.consequences());
      plain.link(cause.id(), cause.leadsTo());
    }
    base.effects().values().forEach(effect -> plain.link(effect.id(), effect.leadsTo()));
    for (Check check : base.checks().values()) {
      double[][] rows = new double[n][];
      check.likelihood().forEach((cause, row) -> rows[plain.causes.indexOf(cause)] = row);
      base.causes().values().stream()
          .filter(c -> !base.effectRows().behind(c, check).isEmpty())
          .forEach(c -> rows[plain.causes.indexOf(c.id())] = null);
      base.effects().values().stream()
          .filter(e -> e.shows().containsKey(check.id()))
          .forEach(e -> rows[plain.causes.indexOf(e.id())] = e.shows().get(check.id()));
      plain.looks.add(new Look(check.id(), check.otherwise(), rows, -1, 0, new int[0]));
    }
    return plain;
  }

  private void link(String from, Map<String, Double> chances) {
    chances.forEach((to, chance) -> links[causes.indexOf(from)][causes.indexOf(to)] = chance);
  }

  private static boolean isKnown(Cause cause) {
    return !cause.id().equals(Cause.NOT_IN_RULE_BASE) && !cause.id().equals(Cause.NOTHING_WRONG);
  }

  /** A fifth of the unknown is like no cause, the rest like each known one in its measure. */
  private void addKinds(RuleBase base) {
    List<Cause> known = base.causes().values().stream().filter(PlainModel::isKnown).toList();
    double all = known.stream().mapToDouble(Cause::prior).sum();
    int unknown = causes.indexOf(Cause.NOT_IN_RULE_BASE);
    double whole = priors[unknown];
    priors = Arrays.copyOf(priors, size() + known.size());
    priors[unknown] = whole / 5;
    for (Cause cause : known) {
      priors[size()] = 0.8 * whole * cause.prior() / all;
      causes.add("not-in-rule-base like " + cause.id());
    }
  }

  /** What the kinds of the unknown show on a check. */
  private void unknown(RuleBase base, Check check, double[][] rows) {
    int outcomes = check.outcomes().size();
    double[] mean = new double[outcomes];
    List<Cause> known = base.causes().values().stream().filter(PlainModel::isKnown).toList();
    for (Cause cause : known) {
      double[] shows = check.likelihood().get(cause.id());
      for (int y = 0; y < outcomes; y++) {
        mean[y] += (shows == null ? y == 0 ? 1 : 0 : shows[y]) / known.size();
      }
      if (shows != null) {
        rows[causes.indexOf("not-in-rule-base like " + cause.id())] = spread(shows);
      }
    }
    if (!check.likelihood().containsKey(Cause.NOT_IN_RULE_BASE)) {
      rows[causes.indexOf(Cause.NOT_IN_RULE_BASE)] = spread(mean);
    }
  }

  private double[] spread(double[] row) {
    double[] spread = new double[row.length];
    for (int y = 0; y < row.length; y++) {
      spread[y] = 0.9 * row[y] + 0.1 / row.length;
    }
    return slipped(spread);
  }

  /** The same with the kinds of the unknown told as one cause: the chance that some is there. */
  boolean[] told(boolean[] set, int causes) {
    boolean[] told = Arrays.copyOf(set, causes);
    int unknown = this.causes.indexOf(Cause.NOT_IN_RULE_BASE);
    for (int kind = causes; kind < set.length; kind++) {
      told[unknown] |= set[kind];
    }
    return told;
  }

  private double[] slipped(double[] row) {
    double[] mixed = new double[row.length];
    for (int i = 0; i < row.length; i++) {
      mixed[i] = row[i] * (1 - CardModel.SLIP) + CardModel.SLIP / row.length;
    }
    return mixed;
  }

  /** Only these causes, as if the others could not be, and only these checks. */
  PlainModel only(List<String> kept, List<String> checks) {
    PlainModel small = new PlainModel();
    small.causes.addAll(kept);
    int[] at = kept.stream().mapToInt(causes::indexOf).toArray();
    small.priors = new double[at.length];
    small.links = new double[at.length][at.length];
    for (int i = 0; i < at.length; i++) {
      small.priors[i] = priors[at[i]];
      for (int j = 0; j < at.length; j++) {
        small.links[i][j] = links[at[i]][at[j]];
      }
    }
    for (Look look : looks) {
      if (checks.contains(look.id())) {
        double[][] rows = new double[at.length][];
        for (int i = 0; i < at.length; i++) {
          rows[i] = look.rows()[at[i]];
        }
        small.looks.add(new Look(look.id(), look.base(), rows, -1, 0, new int[0]));
      }
    }
    return small;
  }

  CausalModel model() {
    CausalModel.Builder builder = CausalModel.builder();
    for (int c = 0; c < size(); c++) {
      builder.cause(causes.get(c), priors[c]);
    }
    for (int c = 0; c < size(); c++) {
      for (int d = 0; d < size(); d++) {
        if (links[c][d] > 0) {
          builder.link(causes.get(c), causes.get(d), links[c][d]);
        }
      }
    }
    for (Look look : looks) {
      Map<String, double[]> rows = new LinkedHashMap<>();
      for (int c = 0; c < size(); c++) {
        if (look.rows()[c] != null) {
          rows.put(causes.get(c), look.rows()[c]);
        }
      }
      builder.check(look.id(), look.base(), rows);
    }
    for (Look look : looks) {
      if (look.original() >= 0) {
        builder.repeats(
            look.id(), looks.get(look.original()).id(), look.share(), look.sameOutcomes());
      }
    }
    return builder.build();
  }

  /** All sets of at most so many causes. */
  List<boolean[]> sets(int most) {
    List<boolean[]> all = new ArrayList<>();
    grow(new boolean[size()], 0, most, all);
    return all;
  }

  private void grow(boolean[] set, int from, int most, List<boolean[]> all) {
    all.add(set);
    for (int c = from; most > 0 && c < size(); c++) {
      boolean[] larger = set.clone();
      larger[c] = true;
      grow(larger, c + 1, most - 1, all);
    }
  }

  /** Divides all odds by the same factor until 1.15 causes are to be expected where one is. */
  private void expectFew() {
    double[] odds = Arrays.stream(priors).map(p -> p / (1 - p)).toArray();
    double least = 0;
    double most = 20;
    for (int i = 0; i < 100; i++) {
      double factor = Math.exp(-(least + most) / 2);
      priors = Arrays.stream(odds).map(o -> factor * o / (1 + factor * o)).toArray();
      double none = Arrays.stream(priors).reduce(1, (all, p) -> all * (1 - p));
      boolean tooMany = Arrays.stream(priors).sum() / (1 - none) > 1.15;
      least = tooMany ? (least + most) / 2 : least;
      most = tooMany ? most : (least + most) / 2;
    }
  }

  double prior(boolean[] set) {
    int[] there = IntStream.range(0, size()).filter(c -> set[c]).toArray();
    double product = 1;
    for (int d = 0; d < size(); d++) {
      double absent = 1 - priors[d];
      for (int c : there) {
        absent *= 1 - links[c][d];
      }
      product *= set[d] ? 1 - absent : absent;
    }
    return product;
  }

  /** Distribution of the greatest of the contributions, one after another. */
  double[] outcomes(Look look, boolean[] set) {
    double[] greatest = look.base().clone();
    for (int c = 0; c < set.length; c++) {
      if (set[c] && look.rows()[c] != null) {
        double[] next = new double[greatest.length];
        for (int i = 0; i < greatest.length; i++) {
          for (int j = 0; j < greatest.length; j++) {
            next[Math.max(i, j)] += greatest[i] * look.rows()[c][j];
          }
        }
        greatest = next;
      }
    }
    return greatest;
  }

  /**
   * Chance of all these answers together, about one machine in one state; each list is of the time
   * between two repairs that changed nothing.
   */
  double together(List<List<Answered>> epochs, boolean[] set) {
    Map<Integer, List<List<Answered>>> groups = new TreeMap<>();
    for (List<Answered> epoch : epochs) {
      Map<Integer, List<Answered>> here = new TreeMap<>();
      for (Answered a : epoch) {
        int original = looks.get(a.look()).original();
        here.computeIfAbsent(original < 0 ? a.look() : original, k -> new ArrayList<>()).add(a);
      }
      here.forEach((k, answers) -> groups.computeIfAbsent(k, x -> new ArrayList<>()).add(answers));
    }
    double product = 1;
    for (Map.Entry<Integer, List<List<Answered>>> group : groups.entrySet()) {
      product *= together(group.getKey(), group.getValue(), 0, -1, set);
    }
    return product;
  }

  /** What the check itself shows is drawn at first, and again one time in ten after a repair. */
  private double together(
      int original, List<List<Answered>> epochs, int at, int first, boolean[] set) {
    if (at == epochs.size()) {
      return 1;
    }
    double[] truth = outcomes(looks.get(original), set);
    double sum = 0;
    double here = 0;
    for (int a = 0; a < truth.length; a++) {
      double chance = at == 0 ? truth[a] : 0.1 * truth[a] + (a == first ? 0.9 : 0);
      for (Answered answer : epochs.get(at)) {
        chance *= given(answer, original, a, set);
      }
      here += chance;
      sum += at == 0 ? chance * together(original, epochs, 1, a, set) : 0;
    }
    return at == 0 ? sum : here * together(original, epochs, at + 1, first, set);
  }

  private double given(Answered answer, int original, int outcome, boolean[] set) {
    if (answer.look() == original) {
      return answer.weights()[outcome];
    }
    Look look = looks.get(answer.look());
    double[] anew = outcomes(look, set);
    double fresh = 0;
    for (int b = 0; b < anew.length; b++) {
      fresh += anew[b] * answer.weights()[b];
    }
    int copy = look.sameOutcomes()[outcome];
    return copy < 0 ? fresh : look.share() * answer.weights()[copy] + (1 - look.share()) * fresh;
  }

  /** The sets that a belief lists. */
  List<boolean[]> sets(Belief belief) {
    List<boolean[]> all = new ArrayList<>();
    for (int h = 0; h < belief.hypotheses(); h++) {
      boolean[] set = new boolean[size()];
      for (int c : belief.lattice().members(h)) {
        set[c] = true;
      }
      all.add(set);
    }
    return all;
  }

  /** All worlds with their joint chance with what was seen, larger sets left out. */
  List<World> worlds(List<Step> steps, int most, boolean someCause) {
    return worlds(steps, sets(most), someCause);
  }

  /** The same that begin with one of these sets. */
  List<World> worlds(List<Step> steps, List<boolean[]> sets, boolean someCause) {
    return after(steps, outset(sets, someCause));
  }

  /** The worlds that begin with one of these sets, before anything was seen. */
  List<World> outset(List<boolean[]> sets, boolean someCause) {
    return sets.stream()
        .map(set -> new World(set, set, set, someCause && none(set) ? 0 : prior(set)))
        .toList();
  }

  /** The same after some steps. */
  List<World> after(List<Step> steps, List<World> outset) {
    List<World> worlds = outset;
    List<List<Answered>> epochs = new ArrayList<>();
    epochs.add(new ArrayList<>());
    for (Step step : steps) {
      if (step instanceof Answered a) {
        epochs.get(epochs.size() - 1).add(a);
      } else if (step instanceof Mended m) {
        worlds = mended(weighed(worlds, epochs), m);
        epochs.add(new ArrayList<>());
      } else if (step instanceof Tried t) {
        worlds =
            worlds.stream()
                .map(w -> new World(w.before(), w.now(), w.now(), w.weight() * tried(t, w)))
                .toList();
      }
    }
    return weighed(worlds, epochs);
  }

  /** Weighs the answers of the last epoch; a world that no repair changed remembers the others. */
  private List<World> weighed(List<World> worlds, List<List<Answered>> epochs) {
    List<List<Answered>> before = epochs.subList(0, epochs.size() - 1);
    List<List<Answered>> last = epochs.subList(epochs.size() - 1, epochs.size());
    return worlds.stream()
        .map(
            w -> {
              boolean same = !before.isEmpty() && Arrays.equals(w.before(), w.now());
              double chance =
                  same
                      ? together(epochs, w.now()) / together(before, w.now())
                      : together(last, w.now());
              return new World(w.before(), w.tried(), w.now(), w.weight() * chance);
            })
        .toList();
  }

  private List<World> mended(List<World> worlds, Mended step) {
    List<World> all = worlds;
    for (int c = 0; c < size(); c++) {
      List<World> next = new ArrayList<>();
      for (World w : all) {
        if (w.now()[c] && step.removes()[c] > 0) {
          boolean[] without = w.now().clone();
          without[c] = false;
          next.add(new World(w.before(), w.tried(), without, w.weight() * step.removes()[c]));
          next.add(new World(w.before(), w.tried(), w.now(), w.weight() * (1 - step.removes()[c])));
        } else {
          next.add(w);
        }
      }
      all = next;
    }
    return all;
  }

  /**
   * Every way in which the complaints can come out is gone through: with the chance that the causes
   * show at all, each is there again with 0.9 times what is left of its chance, and anew with 0.1.
   */
  private double tried(Tried step, World world) {
    double works = 0.995;
    for (int c = 0; c < world.now().length; c++) {
      works *= world.now()[c] ? 1 - step.fails()[c] : 1;
    }
    int told = step.told().size();
    double sum = step.how() == Retest.How.RAN ? works : 0;
    sum += step.how() != Retest.How.RAN && told == 0 ? 1 - works : 0;
    for (int left = 0; told > 0 && left < 1 << told; left++) {
      double chance = 1 - works;
      boolean asTold = true;
      for (int k = 0; k < told; k++) {
        boolean there = (left >> k & 1) == 1;
        double again = again(step.told().get(k), world);
        chance *= there ? again : 1 - again;
        asTold &= step.left().isEmpty() || step.left().get(k) == there;
      }
      sum +=
          switch (step.how()) {
            case RAN -> left == 0 ? 0.7 * chance : 0;
            case FAILED -> left == 0 ? 0.3 * chance : chance;
            case OTHERWISE -> left == (1 << told) - 1 ? 0 : chance;
            case SHOWED -> asTold ? chance : 0;
          };
    }
    return sum;
  }

  private double again(Answered complaint, World world) {
    double now = together(List.of(List.of(complaint)), world.now());
    double then = together(List.of(List.of(complaint)), world.tried());
    return 0.9 * Math.min(1, now / then) + 0.1 * now;
  }

  static boolean none(boolean[] set) {
    for (boolean present : set) {
      if (present) {
        return false;
      }
    }
    return true;
  }

  /** The belief after the same steps. */
  Belief belief(Belief start, List<Step> steps) {
    Belief belief = start;
    for (Step step : steps) {
      if (step instanceof Answered a) {
        belief = belief.learn(observation(a));
      } else if (step instanceof Mended m) {
        Map<String, Double> removes = new LinkedHashMap<>();
        for (int c = 0; c < size(); c++) {
          if (m.removes()[c] > 0) {
            removes.put(causes.get(c), m.removes()[c]);
          }
        }
        belief = belief.repaired(removes);
      } else if (step instanceof Tried t) {
        List<Observation> told = t.told().stream().map(this::observation).toList();
        belief = belief.retested(new Retest(t.how(), told, t.left()), t.fails());
      }
    }
    return belief;
  }

  private Observation observation(Answered answer) {
    List<Double> weights = Arrays.stream(answer.weights()).boxed().toList();
    return new Observation(looks.get(answer.look()).id(), weights);
  }
}
