package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Causes with their prior chances, the links by which one brings about another, and a table for
 * each check of how the causes show on it.
 *
 * <p>Links combine by noisy-OR: P(d | parents present) = 1 - (1 - p_d) prod (1 - q_cd). Checks
 * combine by noisy-MAX: P(Y &lt;= y | H) = B(y) prod_{c in H} C_c(y), where B and C_c are the
 * cumulative rows of the base and of the causes (Pearl 1988; Diez 1993).
 */
public final class CausalModel {
  private final List<String> positions;

  /**
   * For each position, the position of the cause under which it is reported: itself, or the cause
   * that it is a kind of.
   */
  private final int[] told;

  private final boolean[] hasKinds;
  private final List<String> causes;
  private final Map<String, Integer> indices = new HashMap<>();
  private final double[] priors;
  private final int[][] children;
  private final double[][] childChances;
  private final int[][] parents;
  private final double[][] parentChances;
  private final Map<String, CheckTable> tables;
  private final Map<String, Repetition> repetitions;
  private final Effects effects;
  private final Set<String> shared = new HashSet<>();

  /** By check that repeats another, that other: asked for so often that it stands by itself. */
  private final Map<String, String> originals = new HashMap<>();

  private CausalModel(
      List<String> positions,
      int[] told,
      double[] priors,
      double[][] links,
      Map<String, CheckTable> tables,
      Map<String, Repetition> repetitions,
      Effects effects) {
    this.positions = List.copyOf(positions);
    this.told = told;
    this.causes =
        IntStream.range(0, told.length).filter(c -> told[c] == c).mapToObj(positions::get).toList();
    for (int i = 0; i < positions.size(); i++) {
      indices.put(positions.get(i), i);
    }
    hasKinds = new boolean[told.length];
    for (int c = 0; c < told.length; c++) {
      hasKinds[told[c]] |= told[c] != c;
    }
    this.priors = priors;
    int n = positions.size();
    List<List<Integer>> down = emptyLists(n);
    List<List<Integer>> up = emptyLists(n);
    for (double[] link : links) {
      down.get((int) link[0]).add((int) link[1]);
      up.get((int) link[1]).add((int) link[0]);
    }
    Map<Long, Double> chance = new HashMap<>();
    for (double[] link : links) {
      chance.put(pair((int) link[0], (int) link[1]), link[2]);
    }
    children = toArrays(down);
    parents = toArrays(up);
    childChances = new double[n][];
    parentChances = new double[n][];
    for (int c = 0; c < n; c++) {
      int from = c;
      childChances[c] =
          Arrays.stream(children[c]).mapToDouble(d -> chance.get(pair(from, d))).toArray();
      parentChances[c] =
          Arrays.stream(parents[c]).mapToDouble(p -> chance.get(pair(p, from))).toArray();
    }
    this.tables = tables;
    this.repetitions = repetitions;
    this.effects = effects;
    repetitions.forEach(
        (check, repetition) -> {
          shared.add(check);
          shared.add(repetition.original());
          originals.put(check, repetition.original());
        });
  }

  private static long pair(int from, int to) {
    return ((long) from << 32) | to;
  }

  private static List<List<Integer>> emptyLists(int n) {
    List<List<Integer>> lists = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }

  private static int[][] toArrays(List<List<Integer>> lists) {
    return lists.stream()
        .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  public static Builder builder() {
    return new Builder();
  }

  /** Ids of the causes. Everywhere else in this package a cause is given by its position here. */
  public List<String> causes() {
    return causes;
  }

  /** Ids of the causes and, after them, of their kinds. */
  public List<String> positions() {
    return positions;
  }

  /** Number of causes and kinds of causes. */
  public int size() {
    return positions.size();
  }

  /** The cause under which a position is reported: itself, or the cause that it is a kind of. */
  public int told(int position) {
    return told[position];
  }

  boolean hasKinds(int cause) {
    return hasKinds[cause];
  }

  /**
   * The position of a cause.
   *
   * @throws IllegalArgumentException if there is no such cause
   */
  public int indexOf(String cause) {
    Integer index = indices.get(cause);
    if (index == null) {
      throw new IllegalArgumentException("no cause \"" + cause + "\" in the model");
    }
    return index;
  }

  public double prior(int cause) {
    return priors[cause];
  }

  /**
   * The table of a check.
   *
   * @throws IllegalArgumentException if there is no such check
   */
  public CheckTable table(String check) {
    CheckTable table = tables.get(check);
    if (table == null) {
      throw new IllegalArgumentException("no check \"" + check + "\" in the model");
    }
    return table;
  }

  /** A copy in which every look at an effect counts as the first one. */
  CausalModel withoutEffects() {
    return new CausalModel(positions, told, priors, links(), tables, repetitions, Effects.NONE);
  }

  /** The effects of causes and how they show. */
  Effects effects() {
    return effects;
  }

  /** The check that this one repeats, or itself. */
  String original(String check) {
    return originals.getOrDefault(check, check);
  }

  /** How a check repeats another; null if it repeats none. */
  Repetition repetition(String check) {
    return repetitions.get(check);
  }

  /** Whether a check repeats another or is repeated by one. */
  boolean shared(String check) {
    return shared.contains(check);
  }

  /**
   * A copy with the odds of some causes multiplied: p' / (1 - p') = f p / (1 - p). A factor of 0
   * rules a cause out: then no other brings it about either, and it brings about none.
   */
  public CausalModel withOdds(Map<String, Double> factors) {
    double[] changed = priors.clone();
    boolean[] out = new boolean[size()];
    factors.forEach(
        (cause, factor) -> {
          int whole = indexOf(cause);
          for (int c = 0; c < told.length; c++) {
            if (told[c] == whole) {
              double odds = factor * changed[c] / (1 - changed[c]);
              changed[c] = odds / (1 + odds);
              out[c] = factor == 0;
            }
          }
        });
    double[][] links =
        Arrays.stream(links())
            .filter(l -> !out[(int) l[0]] && !out[(int) l[1]])
            .toArray(double[][]::new);
    return new CausalModel(positions, told, changed, links, tables, repetitions, effects);
  }

  private double[][] links() {
    List<double[]> links = new ArrayList<>();
    for (int c = 0; c < size(); c++) {
      for (int k = 0; k < children[c].length; k++) {
        links.add(new double[] {c, children[c][k], childChances[c][k]});
      }
    }
    return links.toArray(double[][]::new);
  }

  int[] children(int cause) {
    return children[cause];
  }

  /** The chance with which a cause brings about each of {@link #children}. */
  double[] childChances(int cause) {
    return childChances[cause];
  }

  int[] parents(int cause) {
    return parents[cause];
  }

  /** The rank of each cause in an order in which it comes after all that bring it about. */
  int[] order() {
    int[] missing = Arrays.stream(parents).mapToInt(p -> p.length).toArray();
    int[] place = new int[size()];
    int[] queue = new int[size()];
    int end = 0;
    for (int c = 0; c < queue.length; c++) {
      if (missing[c] == 0) {
        queue[end++] = c;
      }
    }
    for (int i = 0; i < end; i++) {
      place[queue[i]] = i;
      for (int child : children[queue[i]]) {
        if (--missing[child] == 0) {
          queue[end++] = child;
        }
      }
    }
    return place;
  }

  /** Prior chance that no cause is present. */
  double nothing() {
    double none = 1;
    for (double p : priors) {
      none *= 1 - p;
    }
    return none;
  }

  /** Chance of a cause if everything that can bring it about is present. */
  double greatestChance(int cause) {
    double absent = 1 - priors[cause];
    for (double q : parentChances[cause]) {
      absent *= 1 - q;
    }
    return 1 - absent;
  }

  /**
   * Prior of every hypothesis of a lattice: the product of P(present | parents) over its causes and
   * of P(absent | parents) over the others. Each cause contributes the ratio to its absence without
   * parents. That is never impossible, so nothing is divided by zero if a cause has no prior of its
   * own or is certain to be brought about.
   */
  double[] priors(Lattice lattice) {
    double none = nothing();
    double[] weights = new double[lattice.size()];
    boolean[] present = new boolean[size()];
    int[] members = new int[lattice.depth()];
    for (int h = 0; h < weights.length; h++) {
      int count = lattice.members(h, members);
      for (int i = 0; i < count; i++) {
        present[members[i]] = true;
      }
      weights[h] = none;
      for (int i = 0; i < count; i++) {
        weights[h] *= presence(members[i], present) * bringsNothingMore(members[i], present);
      }
      for (int i = 0; i < count; i++) {
        present[members[i]] = false;
      }
    }
    return weights;
  }

  /** P(cause present | present causes) divided by P(cause absent | nothing brings it about). */
  double presence(int cause, boolean[] present) {
    double chance = priors[cause];
    for (int k = 0; k < parents[cause].length; k++) {
      if (present[parents[cause][k]]) {
        chance += (1 - chance) * parentChances[cause][k];
      }
    }
    return chance / (1 - priors[cause]);
  }

  /** P(a cause brings about none of the absent causes). */
  double bringsNothingMore(int cause, boolean[] present) {
    double chance = 1;
    for (int k = 0; k < children[cause].length; k++) {
      if (!present[children[cause][k]]) {
        chance *= 1 - childChances[cause][k];
      }
    }
    return chance;
  }

  /** Builds a model; names are checked in {@link #build}. */
  public static final class Builder {
    private final List<String> causes = new ArrayList<>();
    private final Map<String, Integer> indices = new HashMap<>();
    private final List<Double> priors = new ArrayList<>();
    private final List<Integer> told = new ArrayList<>();
    private final List<double[]> links = new ArrayList<>();
    private final Map<String, CheckTable> tables = new LinkedHashMap<>();
    private final Map<String, Repetition> repetitions = new LinkedHashMap<>();
    private final Effects.Builder effects = new Effects.Builder();

    private Builder() {}

    public Builder cause(String id, double prior) {
      if (!(prior >= 0 && prior < 1)) {
        throw new IllegalArgumentException("prior of \"" + id + "\" is " + prior);
      }
      indices.putIfAbsent(id, causes.size());
      told.add(causes.size());
      causes.add(id);
      priors.add(prior);
      return this;
    }

    /**
     * Adds a kind of a cause. It takes part in the reasoning like a cause and is reported as the
     * cause {@code of}. All causes must have been added before.
     */
    public Builder kind(String of, String id, double prior) {
      cause(id, prior);
      told.set(told.size() - 1, index(of));
      return this;
    }

    /** Adds a link. Both causes must have been added before. */
    public Builder link(String from, String to, double chance) {
      if (!(chance >= 0 && chance <= 1)) {
        throw new IllegalArgumentException(
            "link from \"" + from + "\" to \"" + to + "\" is " + chance);
      }
      links.add(new double[] {index(from), index(to), chance});
      return this;
    }

    /**
     * Adds a check.
     *
     * @param rows by cause, its contribution over the outcomes, ordinary first, adding up to 1
     * @param base the row when none of these causes is present
     */
    public Builder check(String id, double[] base, Map<String, double[]> rows) {
      int[] who = rows.keySet().stream().mapToInt(this::index).toArray();
      double[][] table = rows.values().toArray(double[][]::new);
      tables.put(id, new CheckTable(id, base, who, table));
      return this;
    }

    /**
     * Adds the effects that a cause may bring about, each with its chance; call it before {@link
     * #byEffects}.
     */
    public Builder effects(String cause, Map<String, Double> chances) {
      effects.effects(index(cause), chances);
      return this;
    }

    /**
     * Declares that the row of a cause on a check follows from its effects.
     *
     * @param rows by effect, the chance of each outcome when it alone is present
     * @param evenly share of the row that is spread evenly over the outcomes
     */
    public Builder byEffects(
        String check, String cause, Map<String, double[]> rows, double evenly) {
      effects.shows(check, index(cause), rows, evenly);
      return this;
    }

    /**
     * Declares that a check partly repeats another one.
     *
     * @param share chance that it copies what the other shows, 0 to 1
     * @param outcomes for each outcome of the original the same outcome of the check, or -1
     */
    public Builder repeats(String check, String original, double share, int... outcomes) {
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException("the share of \"" + check + "\" is " + share);
      }
      repetitions.put(check, new Repetition(original, share, outcomes.clone()));
      return this;
    }

    private int index(String cause) {
      Integer index = indices.get(cause);
      if (index == null) {
        throw new IllegalArgumentException("no cause \"" + cause + "\" in the model");
      }
      return index;
    }

    /**
     * @throws IllegalArgumentException if a repetition has no original, or repeats a repetition, or
     *     if links form a loop
     */
    public CausalModel build() {
      repetitions.forEach(this::single);
      noLoop();
      return new CausalModel(
          causes,
          told.stream().mapToInt(Integer::intValue).toArray(),
          priors.stream().mapToDouble(Double::doubleValue).toArray(),
          links.toArray(double[][]::new),
          new HashMap<>(tables), // asked for at every step; an immutable map takes twice as long
          new HashMap<>(repetitions),
          effects.build(causes.size()));
    }

    private void single(String check, Repetition repetition) {
      String original = repetition.original();
      if (!tables.containsKey(check) || !tables.containsKey(original)) {
        throw new IllegalArgumentException(
            "\"" + check + "\" repeats \"" + original + "\", and one of them is no check");
      }
      if (repetitions.containsKey(original)) {
        throw new IllegalArgumentException(
            "\"" + check + "\" repeats \"" + original + "\", which repeats another check itself");
      }
      if (repetition.outcomes().length != tables.get(original).outcomes()) {
        throw new IllegalArgumentException(
            "\"" + check + "\" does not say which outcomes of \"" + original + "\" it repeats");
      }
    }

    private void noLoop() {
      List<double[]> left = List.copyOf(links);
      for (int before = -1; before != left.size(); ) {
        before = left.size();
        Set<Double> brought = left.stream().map(l -> l[1]).collect(Collectors.toSet());
        // A cause that none of the remaining links leads to is not part of a loop.
        left = left.stream().filter(l -> brought.contains(l[0])).toList();
      }
      if (!left.isEmpty()) {
        throw new IllegalArgumentException(
            "the links into \"" + causes.get((int) left.get(0)[1]) + "\" form a loop");
      }
    }
  }
}
