package yett.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Finds the best order of repairs when nothing more is asked. Each repair is followed by a retest,
 * and handing over is possible at any point. The result is exact, by dynamic programming over
 * subsets of the most relevant repairs and the set-ups that they lead to. With one fault,
 * independent repairs and no set-ups it is the order by falling probability over cost (Kadane and
 * Simon 1977).
 *
 * <p>It is called hundreds of times for one step, so it reuses its arrays. Not thread-safe.
 */
final class RepairOrder {
  /** Share of the chance to fail below which it is only rounding. */
  private static final double NEVER = 1e-12;

  private final Scene scene;
  private final int limit;

  /** For each repair, the causes that it removes; {@code chances} holds the chances. */
  private final int[][] removed;

  private final double[][] chances;

  /** By hypothesis, whether there are repairs for all of its causes. */
  private final boolean[] mendable;

  private final double[] efforts;

  /** For each repair, the least chance for which it is begun. */
  private final double[] least;

  /** For each repair, whether the chance that it removes something is enough to begin with it. */
  private final boolean[] begins;

  private final Steps steps;
  private final int[] chosen;
  private final double[] scores;
  private final double[] marginals;
  private final double[] alone;
  private final double[][] stays;
  private final boolean[] touched;

  /** Causes as bits, so that a hypothesis is looked through in one or two steps. */
  private final long[][] hypothesisBits;

  private final long[][] removedBits;
  private final long[] touchedBits;
  private final long[] removableBits;
  private final double[] fails;
  private final double[] failing;
  private final double[] gone;
  private final double[] due;
  private int[] states = new int[8];
  private double[] closing = new double[8];
  private double[][] price = new double[0][];
  private int[][] leads = new int[0][];
  private double[][] best = new double[0][];
  private int[][] next = new int[0][];
  private int size;

  /** Chance that the needed repair is possible but not among those that are ordered. */
  private double others;

  /**
   * Cost of getting to such a repair, without the repair itself; at most the cost of handing over.
   */
  private double searching;

  /**
   * @param limit most repairs that are ordered
   */
  RepairOrder(Scene scene, int limit) {
    this(scene, limit, new Steps(scene));
  }

  /** With another limit; what repairs cost and lead to is worked out for both together. */
  RepairOrder withLimit(int other) {
    return new RepairOrder(scene, other, steps);
  }

  private RepairOrder(Scene scene, int limit, Steps steps) {
    this.scene = scene;
    this.steps = steps;
    this.limit = Math.min(limit, scene.repairs().size());
    removed = new int[scene.repairs().size()][];
    chances = new double[removed.length][];
    for (int r = 0; r < removed.length; r++) {
      double[] removes = scene.repairs().get(r).removes();
      removed[r] = IntStream.range(0, removes.length).filter(c -> removes[c] > 0).toArray();
      chances[r] = Arrays.stream(removed[r]).mapToDouble(c -> removes[c]).toArray();
    }
    boolean[] mended = new boolean[scene.causes()];
    for (int[] causes : removed) {
      for (int c : causes) {
        mended[c] = true;
      }
    }
    mendable = new boolean[scene.hypotheses().length];
    for (int h = 0; h < mendable.length; h++) {
      mendable[h] = Arrays.stream(scene.hypotheses()[h]).allMatch(c -> mended[c]);
    }
    efforts =
        scene.repairs().stream()
            .mapToDouble(j -> Math.max(j.cost() + scene.retestCost(), 0.1))
            .toArray();
    begins = new boolean[removed.length];
    least = scene.repairs().stream().mapToDouble(Scene.Job::least).toArray();
    searching = scene.handOver();
    chosen = new int[this.limit];
    scores = new double[this.limit];
    marginals = new double[scene.causes()];
    alone = new double[scene.causes()];
    stays = new double[scene.causes()][1 << this.limit];
    touched = new boolean[scene.causes()];
    hypothesisBits = bits(scene.hypotheses());
    removedBits = bits(removed);
    touchedBits = new long[words()];
    removableBits = new long[words()];
    fails = new double[this.limit];
    failing = new double[1 << this.limit];
    gone = new double[1 << this.limit];
    due = new double[1 << this.limit];
  }

  private int words() {
    return scene.causes() / Long.SIZE + 1;
  }

  private long[][] bits(int[][] sets) {
    long[][] bits = new long[sets.length][words()];
    for (int i = 0; i < sets.length; i++) {
      for (int c : sets[i]) {
        bits[i][c / Long.SIZE] |= 1L << c;
      }
    }
    return bits;
  }

  private static boolean within(long[] set, long[] all) {
    for (int w = 0; w < set.length; w++) {
      if ((set[w] & ~all[w]) != 0) {
        return false;
      }
    }
    return true;
  }

  /**
   * A solution.
   *
   * @param value expected cost until the end
   * @param repairs positions of the repairs to do, in order, each only if those before did not cure
   * @param chances for each of them the chance that it is reached
   */
  record Order(double value, List<Integer> repairs, List<Double> chances) {}

  /**
   * Expected cost until the end with these set-ups and weights of the hypotheses.
   *
   * @param tried by repair, whether it has been tried without success
   */
  double value(double[] weights, int state, boolean[] tried) {
    choose(weights, tried);
    failing(weights, tried);
    due();
    return solve(state);
  }

  /**
   * Sets the cost of going on to repairs that are not among those ordered, because one would ask
   * more before handing over. Until it is set, it is the cost of handing over.
   */
  void searching(double cost) {
    searching = Math.min(cost, scene.handOver());
  }

  /** The first repair of the last solution, or -1 if it has none. */
  int first() {
    return next[0][0] < 0 ? -1 : chosen[next[0][0]];
  }

  /** Whether a solution may begin with this repair, whether or not it is the best. */
  boolean mayBegin(int repair) {
    return begins[repair];
  }

  Order order(double[] weights, int state, boolean[] tried) {
    double value = value(weights, state, tried);
    List<Integer> repairs = new ArrayList<>();
    List<Double> reached = new ArrayList<>();
    int at = 0;
    for (int done = 0; next[at][done] >= 0 && failing[done] > NEVER * failing[0]; ) {
      int r = next[at][done];
      repairs.add(chosen[r]);
      reached.add(Math.min(1, failing[done] / failing[0]));
      at = leads[at][r];
      done |= 1 << r;
    }
    return new Order(value, repairs, reached);
  }

  /** Chooses the repairs that remove most probability for their cost. */
  private void choose(double[] weights, boolean[] tried) {
    Arrays.fill(marginals, 0);
    for (int h = 0; h < weights.length; h++) {
      if (weights[h] > 0) {
        for (int c : scene.hypotheses()[h]) {
          marginals[c] += weights[h];
        }
      }
    }
    size = 0;
    for (int r = 0; r < removed.length; r++) {
      if (!tried[r]) {
        double removes = 0;
        for (int k = 0; k < removed[r].length; k++) {
          removes += marginals[removed[r][k]] * chances[r][k];
        }
        begins[r] = removes >= least[r];
        double score = removes / efforts[r];
        if (score > 1e-9) {
          insert(r, score);
        }
      }
    }
  }

  /** Keeps the best scores in falling order; of equal ones, the first. */
  private void insert(int repair, double score) {
    int at = size;
    while (at > 0 && scores[at - 1] < score) {
      at--;
    }
    if (at == limit) {
      return;
    }
    size = Math.min(size + 1, limit);
    for (int i = size - 1; i > at; i--) {
      scores[i] = scores[i - 1];
      chosen[i] = chosen[i - 1];
    }
    scores[at] = score;
    chosen[at] = repair;
  }

  /** Computes the chance that the gate still fails after each subset of the chosen repairs. */
  private void failing(double[] weights, boolean[] tried) {
    int subsets = 1 << size;
    stays(subsets);
    Arrays.fill(alone, 0);
    Arrays.fill(failing, 0, subsets, 0);
    double always = 0;
    double nothing = 0;
    others = 0;
    boolean all = size < limit; // then every repair that could help is in the order
    if (!all) {
      removable(tried);
    }
    for (int h = 0; h < weights.length; h++) {
      int[] causes = scene.hypotheses()[h];
      double weight = weights[h];
      if (weight == 0) {
        continue;
      }
      if (causes.length == 0) {
        nothing += weight;
      } else if (!within(hypothesisBits[h], touchedBits)) {
        always += weight;
        others += !all && mendable[h] && within(hypothesisBits[h], removableBits) ? weight : 0;
      } else if (causes.length == 1) {
        alone[causes[0]] += weight;
      } else {
        together(causes, weight, subsets);
      }
    }
    for (int c = 0; c < alone.length; c++) {
      if (alone[c] > 0) {
        double[] row = stays[c];
        for (int done = 0; done < subsets; done++) {
          failing[done] += alone[c] * row[done];
        }
      }
    }
    for (int done = 0; done < subsets; done++) {
      failing[done] += always;
    }
    // A gate that failed a try although nothing is wrong runs at the next try.
    failing[0] += scene.cured() ? 0 : nothing;
  }

  private void stays(int subsets) {
    Arrays.fill(touched, false);
    Arrays.fill(touchedBits, 0);
    for (int i = 0; i < size; i++) {
      add(removedBits[chosen[i]], touchedBits);
      int[] causes = removed[chosen[i]];
      for (int k = 0; k < causes.length; k++) {
        double[] row = stays[causes[k]];
        if (!touched[causes[k]]) {
          touched[causes[k]] = true;
          Arrays.fill(row, 0, subsets, 1);
        }
        double stays = 1 - chances[chosen[i]][k];
        for (int done = 1 << i; done < subsets; done = (done + 1) | 1 << i) {
          row[done] *= stays;
        }
      }
    }
  }

  /** Marks the causes that some repair can still remove, whether it is among the chosen or not. */
  private void removable(boolean[] tried) {
    System.arraycopy(touchedBits, 0, removableBits, 0, touchedBits.length);
    for (int r = 0; r < removedBits.length; r++) {
      if (!tried[r]) {
        add(removedBits[r], removableBits);
      }
    }
  }

  private static void add(long[] some, long[] to) {
    for (int w = 0; w < to.length; w++) {
      to[w] |= some[w];
    }
  }

  /**
   * Computes the cost of repairs still due after each subset of the chosen ones, weighted by the
   * chance that they are needed.
   */
  private void due() {
    int subsets = 1 << size;
    Arrays.fill(due, 0, subsets, 0);
    double always = 0;
    for (int c = 0; c < marginals.length; c++) {
      double cost = marginals[c] * scene.due()[c];
      if (cost > 0 && touched[c]) {
        double[] row = stays[c];
        for (int done = 0; done < subsets; done++) {
          due[done] += cost * row[done];
        }
      } else {
        always += cost;
      }
    }
    for (int done = 0; done < subsets; done++) {
      due[done] += always;
    }
  }

  private void together(int[] causes, double weight, int subsets) {
    double[] first = stays[causes[0]];
    for (int done = 0; done < subsets; done++) {
      gone[done] = weight * (1 - first[done]);
    }
    for (int k = 1; k < causes.length; k++) {
      double[] row = stays[causes[k]];
      for (int done = 0; done < subsets; done++) {
        gone[done] *= 1 - row[done];
      }
    }
    for (int done = 0; done < subsets; done++) {
      failing[done] += weight - gone[done];
    }
  }

  private double solve(int start) {
    int reached = reach(steps.position(start));
    closing = reached > closing.length ? new double[states.length] : closing;
    for (int at = 0; at < reached; at++) {
      closing[at] = steps.closing(states[at]);
    }
    for (int done = (1 << size) - 1; done >= 0; done--) {
      double leaving = leaving(done);
      for (int r = 0; r < size; r++) {
        fails[r] = failing[done] > 0 ? Math.min(1, failing[done | 1 << r] / failing[done]) : 0;
      }
      // Only the start is there before anything is done.
      for (int at = done == 0 ? 0 : reached - 1; at >= 0; at--) {
        solve(done, at, leaving);
      }
    }
    return best[0][0];
  }

  /** Lists the combinations of set-ups that the chosen repairs lead to, the start first. */
  private int reach(int start) {
    states[0] = start;
    int reached = 1;
    for (int at = 0; at < reached; at++) {
      if (at == best.length) {
        grow();
      }
      for (int i = 0; i < size; i++) {
        int then = steps.next(states[at], chosen[i]);
        int known = 0;
        while (known < reached && states[known] != then) {
          known++;
        }
        if (known == reached) {
          states = reached == states.length ? Arrays.copyOf(states, 2 * reached) : states;
          states[reached++] = then;
        }
        leads[at][i] = known;
        price[at][i] = steps.cost(states[at], chosen[i]);
      }
    }
    return reached;
  }

  private void grow() {
    int last = best.length;
    best = Arrays.copyOf(best, last + 1);
    next = Arrays.copyOf(next, last + 1);
    leads = Arrays.copyOf(leads, last + 1);
    price = Arrays.copyOf(price, last + 1);
    best[last] = new double[1 << limit];
    next[last] = new int[1 << limit];
    leads[last] = new int[limit];
    price[last] = new double[limit];
  }

  private void solve(int done, int at, double leaving) {
    double least = leaving + closing[at];
    int choice = -1;
    for (int r = 0; r < size; r++) {
      if ((done >> r & 1) == 0 && (done > 0 || begins[chosen[r]])) {
        double value = doing(done, at, r);
        if (value < least - 1e-12) {
          least = value;
          choice = r;
        }
      }
    }
    best[at][done] = least;
    next[at][done] = choice;
  }

  /**
   * Cost of doing no more of the chosen repairs, under the condition that the gate still fails, if
   * it can.
   */
  private double leaving(int done) {
    if (scene.cured()) {
      return failing[done] * scene.callBack() + due[done];
    }
    double fails = failing[done];
    if (!(fails > 0)) {
      return scene.handOver();
    }
    double elsewhere = others > 0 ? Math.min(1, others / fails) : 0;
    return scene.handOver() * (1 - elsewhere) + searching * elsewhere + due[done] / fails;
  }

  private double doing(int done, int at, int r) {
    int then = done | 1 << r;
    int after = leads[at][r];
    if (scene.cured()) {
      return price[at][r] + best[after][then];
    }
    return price[at][r] + fails[r] * best[after][then] + (1 - fails[r]) * closing[after];
  }

  /**
   * The cost of each repair with its retest from each combination of set-ups, and the resulting
   * one.
   */
  private static final class Steps {
    private static final int UNKNOWN = -1;

    private final Scene scene;
    private final Map<Integer, Integer> positions = new HashMap<>();
    private final List<Integer> states = new ArrayList<>();
    private final List<double[]> costs = new ArrayList<>();
    private final List<int[]> next = new ArrayList<>();
    private final List<Double> closing = new ArrayList<>();

    Steps(Scene scene) {
      this.scene = scene;
    }

    int position(int state) {
      Integer known = positions.get(state);
      if (known != null) {
        return known;
      }
      positions.put(state, states.size());
      states.add(state);
      closing.add(scene.workshop().close(state));
      costs.add(new double[scene.repairs().size()]);
      int[] unknown = new int[scene.repairs().size()];
      Arrays.fill(unknown, UNKNOWN);
      next.add(unknown);
      return states.size() - 1;
    }

    double closing(int position) {
      return closing.get(position);
    }

    double cost(int position, int repair) {
      if (next.get(position)[repair] == UNKNOWN) {
        work(position, repair);
      }
      return costs.get(position)[repair];
    }

    int next(int position, int repair) {
      if (next.get(position)[repair] == UNKNOWN) {
        work(position, repair);
      }
      return next.get(position)[repair];
    }

    private void work(int position, int repair) {
      costs.get(position)[repair] = scene.trying(repair, states.get(position));
      next.get(position)[repair] = position(scene.afterTrying(repair, states.get(position)));
    }
  }
}
