package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Causes with their prior chances and the links by which one brings about another, and for each
 * check how the causes show there.
 *
 * <p>Links combine by noisy-OR: P(d | parents present) = 1 - (1 - p_d) prod (1 - q_cd). Checks
 * combine by noisy-MAX: P(Y &lt;= y | H) = B(y) prod_{c in H} C_c(y), where B and C_c are the
 * cumulative rows of the base and of the causes (Pearl 1988; Diez 1993).
 */
public final class CausalModel {
  private final List<String> causes;
  private final Map<String, Integer> indices = new HashMap<>();
  private final double[] priors;
  private final int[][] children;
  private final double[][] childChances;
  private final int[][] parents;
  private final double[][] parentChances;
  private final Map<String, CheckTable> tables;
  private final Map<String, Repetition> repetitions;

  private CausalModel(
      List<String> causes,
      double[] priors,
      double[][] links,
      Map<String, CheckTable> tables,
      Map<String, Repetition> repetitions) {
    this.causes = List.copyOf(causes);
    for (int i = 0; i < causes.size(); i++) {
      indices.put(causes.get(i), i);
    }
    this.priors = priors;
    int n = causes.size();
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

  /** Ids of the causes; everywhere else a cause is its position here. */
  public List<String> causes() {
    return causes;
  }

  public int size() {
    return causes.size();
  }

  /**
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
   * @throws IllegalArgumentException if there is no such check
   */
  public CheckTable table(String check) {
    CheckTable table = tables.get(check);
    if (table == null) {
      throw new IllegalArgumentException("no check \"" + check + "\" in the model");
    }
    return table;
  }

  public boolean hasCheck(String check) {
    return tables.containsKey(check);
  }

  /** The check of which this one is a repetition, or itself. */
  String original(String check) {
    Repetition repetition = repetitions.get(check);
    return repetition == null ? check : repetition.original();
  }

  /** How a check repeats another, or null if it stands alone. */
  Repetition repetition(String check) {
    return repetitions.get(check);
  }

  /** Whether a check repeats another or is repeated. */
  boolean shared(String check) {
    return repetitions.containsKey(check)
        || repetitions.values().stream().anyMatch(r -> r.original().equals(check));
  }

  /**
   * The same model with other priors.
   *
   * @param changed one prior for each cause, 0 where a cause is ruled out, so that no other cause
   *     brings it about either
   */
  CausalModel withPriors(double[] changed) {
    double[][] links =
        Arrays.stream(links())
            .filter(l -> changed[(int) l[0]] > 0 && changed[(int) l[1]] > 0)
            .toArray(double[][]::new);
    return new CausalModel(causes, changed.clone(), links, tables, repetitions);
  }

  /**
   * This model with the odds of some causes multiplied: p' / (1 - p') = f p / (1 - p); a factor of
   * 0 rules a cause out.
   */
  public CausalModel withOdds(Map<String, Double> factors) {
    double[] changed = priors.clone();
    factors.forEach(
        (cause, factor) -> {
          int c = indexOf(cause);
          double odds = factor * changed[c] / (1 - changed[c]);
          changed[c] = odds / (1 + odds);
        });
    return Arrays.equals(changed, priors) ? this : withPriors(changed);
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

  /**
   * Prior of every hypothesis of a lattice: the product of P(present | parents) over its causes and
   * of P(absent | parents) over the others. Worked out from the parent hypothesis by the factors
   * that the added cause changes.
   */
  double[] priors(Lattice lattice) {
    double[] weights = new double[lattice.size()];
    weights[0] = 1;
    for (double p : priors) {
      weights[0] *= 1 - p;
    }
    boolean[] present = new boolean[size()];
    int[] members = new int[lattice.depth()];
    for (int h = 1; h < weights.length; h++) {
      int count = lattice.members(h, members);
      for (int i = 1; i < count; i++) {
        present[members[i]] = true;
      }
      weights[h] = weights[lattice.parent(h)] * gain(members[0], present);
      for (int i = 1; i < count; i++) {
        present[members[i]] = false;
      }
    }
    return weights;
  }

  /** By what the prior changes when a cause joins those present. */
  private double gain(int cause, boolean[] present) {
    double chance = presentChance(cause, present);
    double gain = chance / (1 - chance);
    for (int k = 0; k < children[cause].length; k++) {
      int child = children[cause][k];
      if (present[child]) {
        double before = presentChance(child, present);
        gain *= (1 - (1 - before) * (1 - childChances[cause][k])) / before;
      } else {
        gain *= 1 - childChances[cause][k];
      }
    }
    return gain;
  }

  private double presentChance(int cause, boolean[] present) {
    double absent = 1 - priors[cause];
    for (int k = 0; k < parents[cause].length; k++) {
      if (present[parents[cause][k]]) {
        absent *= 1 - parentChances[cause][k];
      }
    }
    return 1 - absent;
  }

  /** Puts a model together; names are checked when it is built. */
  public static final class Builder {
    private final List<String> causes = new ArrayList<>();
    private final List<Double> priors = new ArrayList<>();
    private final List<double[]> links = new ArrayList<>();
    private final Map<String, CheckTable> tables = new LinkedHashMap<>();
    private final Map<String, Repetition> repetitions = new LinkedHashMap<>();

    private Builder() {}

    public Builder cause(String id, double prior) {
      if (!(prior >= 0 && prior < 1)) {
        throw new IllegalArgumentException("prior of \"" + id + "\" is " + prior);
      }
      causes.add(id);
      priors.add(prior);
      return this;
    }

    /** Both causes must have been added before. A chance of 1 is taken as 1 - 1e-12. */
    public Builder link(String from, String to, double chance) {
      if (!(chance >= 0 && chance <= 1)) {
        throw new IllegalArgumentException(
            "link from \"" + from + "\" to \"" + to + "\" is " + chance);
      }
      links.add(new double[] {index(from), index(to), Math.min(chance, 1 - 1e-12)});
      return this;
    }

    /**
     * @param rows contribution of each cause over the outcomes, ordinary first, adding up to 1
     * @param base what shows when none of these causes is there
     */
    public Builder check(String id, double[] base, Map<String, double[]> rows) {
      int[] who = rows.keySet().stream().mapToInt(this::index).toArray();
      double[][] table = rows.values().toArray(double[][]::new);
      tables.put(id, new CheckTable(id, base, who, table));
      return this;
    }

    /**
     * Says that a check is partly another one over again. Both must have been added before, and the
     * original must not repeat a third.
     *
     * @param outcomes for each outcome of the original the same outcome of the check, or -1
     */
    public Builder repeats(String check, String original, double share, int... outcomes) {
      if (repetitions.containsKey(original)) {
        throw new IllegalArgumentException(
            "\"" + check + "\" repeats \"" + original + "\", which repeats another check itself");
      }
      repetitions.put(check, new Repetition(original, share, outcomes.clone()));
      return this;
    }

    private int index(String cause) {
      int index = causes.indexOf(cause);
      if (index < 0) {
        throw new IllegalArgumentException("no cause \"" + cause + "\" in the model");
      }
      return index;
    }

    public CausalModel build() {
      return new CausalModel(
          causes,
          priors.stream().mapToDouble(Double::doubleValue).toArray(),
          links.toArray(double[][]::new),
          Map.copyOf(tables),
          Map.copyOf(repetitions));
    }
  }
}
