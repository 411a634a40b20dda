package yett.belief;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The rows of causes on one check, cumulative over its ordered outcomes.
 *
 * <p>With base B and contributions C_c, P(Y &lt;= y | H) = B(y) prod_{c in H} C_c(y).
 */
public final class CheckTable {
  private static final double TOLERANCE = 1e-6;

  /** Differences of products below this are rounding. */
  private static final double ROUNDING = 1e-14;

  private final String id;
  private final double[] base;

  /** Causes with a row here, ascending, and the cumulative row of each. */
  private final int[] causes;

  private final double[][] rows;

  /** For each cause up to the last with a row here, its row or null. */
  private final double[][] byCause;

  CheckTable(String id, double[] base, int[] causes, double[][] rows) {
    this.id = id;
    this.base = cumulative(id, base);
    this.causes = Arrays.stream(causes).sorted().toArray();
    this.rows = new double[causes.length][];
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length != base.length) {
        throw new IllegalArgumentException(
            "a row of \"" + id + "\" has " + rows[i].length + " outcomes, not " + base.length);
      }
      this.rows[Arrays.binarySearch(this.causes, causes[i])] = cumulative(id, rows[i]);
    }
    byCause = byCause(this.causes, this.rows);
  }

  private static double[][] byCause(int[] causes, double[][] rows) {
    double[][] all = new double[causes.length == 0 ? 0 : causes[causes.length - 1] + 1][];
    for (int i = 0; i < causes.length; i++) {
      all[causes[i]] = rows[i];
    }
    return all;
  }

  private CheckTable(CheckTable other, double[][] rows) {
    this.id = other.id;
    this.base = other.base;
    this.causes = other.causes;
    this.rows = rows;
    byCause = byCause(causes, rows);
  }

  /**
   * A copy with other rows for some of its causes.
   *
   * @param others by position of the cause, its cumulative row
   */
  CheckTable with(Map<Integer, double[]> others) {
    double[][] changed = rows.clone();
    others.forEach((cause, row) -> changed[Arrays.binarySearch(causes, cause)] = row);
    return new CheckTable(this, changed);
  }

  private static double[] cumulative(String id, double[] row) {
    double[] sums = new double[row.length];
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      if (!(row[i] >= 0)) {
        throw new IllegalArgumentException("a chance of \"" + id + "\" is " + row[i]);
      }
      sum += row[i];
      sums[i] = sum;
    }
    if (Math.abs(sum - 1) > TOLERANCE) {
      throw new IllegalArgumentException("a row of \"" + id + "\" adds up to " + sum);
    }
    // Exactly 1 from the last possible outcome on, so that rounding gives impossible outcomes no
    // chance.
    for (int i = row.length - 1; i >= 0; i--) {
      sums[i] = 1;
      if (row[i] > 0) {
        break;
      }
    }
    return sums;
  }

  public String id() {
    return id;
  }

  public int outcomes() {
    return base.length;
  }

  private double[] row(int cause) {
    return cause < byCause.length ? byCause[cause] : null;
  }

  /** Cumulative row of a cause; null if it has none here. Callers must not change the array. */
  double[] cumulative(int cause) {
    return row(cause);
  }

  /** Cumulative row when none of the causes is present. Callers must not change the array. */
  double[] cumulativeBase() {
    return base;
  }

  /** Whether any of these causes, given by position, has a row here. */
  boolean shows(boolean[] which) {
    for (int cause : causes) {
      if (which[cause]) {
        return true;
      }
    }
    return false;
  }

  /**
   * Chance of each outcome under every hypothesis of a lattice.
   *
   * @return by outcome, then by hypothesis
   */
  double[][] outcomeChances(Lattice lattice) {
    double[][] chances = new double[outcomes()][lattice.size()];
    for (int y = 0; y < chances.length - 1; y++) {
      cumulative(lattice, y, chances[y]);
    }
    Arrays.fill(chances[chances.length - 1], 1);
    for (int y = chances.length - 1; y > 0; y--) {
      for (int h = 0; h < chances[y].length; h++) {
        chances[y][h] = Math.max(0, chances[y][h] - chances[y - 1][h]);
      }
    }
    return chances;
  }

  /**
   * Sum of weight times chance over the outcomes, under every hypothesis of a lattice. Summation by
   * parts needs only as many cumulative chances as the weights have steps: one for a certain answer
   * at either end.
   */
  double[] mixed(Lattice lattice, double[] weights) {
    double[] mixed = new double[lattice.size()];
    mixed(lattice, weights, mixed, Scratch.ofThisThread());
    return mixed;
  }

  /** The same, written into an array of the lattice's size. */
  void mixed(Lattice lattice, double[] weights, double[] into, Scratch scratch) {
    double[] products = scratch.numbers(into.length);
    Arrays.fill(into, weights[outcomes() - 1]);
    for (int y = 0; y < outcomes() - 1; y++) {
      double step = weights[y] - weights[y + 1];
      if (step != 0) {
        products[0] = upTo(base, y, List.of());
        add(lattice, step, factors(lattice, y, List.of()), products, into);
      }
    }
    for (int h = 0; h < into.length; h++) {
      into[h] = Math.max(0, into[h]); // rounding
    }
  }

  /**
   * Adds a multiple of the products of factors over each set.
   *
   * @param products of the empty set at first; room for the others
   */
  private static void add(
      Lattice lattice, double step, double[] factors, double[] products, double[] into) {
    into[0] += step * products[0];
    for (int h = 1; h < into.length; h++) {
      double product = products[lattice.parent(h)] * factors[lattice.last(h)];
      products[h] = product;
      into[h] += step * product;
    }
  }

  private void cumulative(Lattice lattice, int outcome, double[] into) {
    cumulative(lattice, outcome, List.of(), into);
  }

  /** The same over contributions without some outcomes, all of them at most this one. */
  private void cumulative(Lattice lattice, int outcome, List<Integer> without, double[] into) {
    double[] factors = factors(lattice, outcome, without);
    into[0] = upTo(base, outcome, without);
    for (int h = 1; h < into.length; h++) {
      into[h] = into[lattice.parent(h)] * factors[lattice.last(h)];
    }
  }

  private double[] factors(Lattice lattice, int outcome, List<Integer> without) {
    double[] factors = new double[lattice.causes()];
    Arrays.fill(factors, 1);
    for (int i = 0; i < rows.length; i++) {
      factors[causes[i]] = upTo(rows[i], outcome, without);
    }
    return factors;
  }

  /** Chance of a contribution up to an outcome, but of none of those without. */
  private static double upTo(double[] row, int outcome, List<Integer> without) {
    double chance = row[outcome];
    for (int a : without) {
      chance -= row[a] - (a == 0 ? 0 : row[a - 1]);
    }
    return Math.max(0, chance);
  }

  /**
   * Chance that the highest of several outcomes shows and that something contributes each of the
   * others, under every hypothesis of a lattice: by inclusion and exclusion over the others that
   * nothing contributes.
   */
  double[] several(Lattice lattice, Observation.Ticks ticks) {
    double[] sum = new double[lattice.size()];
    double[] product = new double[lattice.size()];
    int highest = ticks.highest();
    for (int subset = 0; subset < 1 << ticks.others().size(); subset++) {
      List<Integer> without = chosen(ticks.others(), subset);
      for (int outcome : new int[] {highest, highest - 1}) {
        cumulative(lattice, outcome, without, product);
        double sign = sign(without, outcome < highest);
        for (int h = 0; h < sum.length; h++) {
          sum[h] += sign * product[h];
        }
      }
    }
    return withoutRounding(sum, ticks);
  }

  /** The same under some sets of causes. */
  double[] several(int[][] sets, Observation.Ticks ticks) {
    double[] sum = new double[sets.length];
    int highest = ticks.highest();
    for (int subset = 0; subset < 1 << ticks.others().size(); subset++) {
      List<Integer> without = chosen(ticks.others(), subset);
      for (int outcome : new int[] {highest, highest - 1}) {
        double sign = sign(without, outcome < highest);
        for (int i = 0; i < sets.length; i++) {
          double product = upTo(base, outcome, without);
          for (int cause : sets[i]) {
            double[] row = row(cause);
            product *= row == null ? 1 : upTo(row, outcome, without);
          }
          sum[i] += sign * product;
        }
      }
    }
    return withoutRounding(sum, ticks);
  }

  private static List<Integer> chosen(List<Integer> others, int subset) {
    return IntStream.range(0, others.size())
        .filter(i -> (subset >> i & 1) == 1)
        .mapToObj(others::get)
        .toList();
  }

  private static double sign(List<Integer> without, boolean less) {
    return without.size() % 2 == 0 != less ? 1 : -1;
  }

  /** Nothing impossible gets a chance by rounding: fewer contributors than ticks, for example. */
  private static double[] withoutRounding(double[] sums, Observation.Ticks ticks) {
    double least = ROUNDING * (1 << ticks.others().size());
    for (int i = 0; i < sums.length; i++) {
      sums[i] = sums[i] < least ? 0 : sums[i];
    }
    return sums;
  }

  /**
   * Chance of each outcome under some sets of causes.
   *
   * @return by outcome, then by set
   */
  double[][] outcomeChances(int[][] sets) {
    double[][] chances = new double[outcomes()][sets.length];
    for (int y = 0; y < chances.length; y++) {
      double[] chance = chances[y];
      for (int i = 0; i < chance.length; i++) {
        double product = base[y];
        for (int cause : sets[i]) {
          double[] row = row(cause);
          if (row != null) {
            product *= row[y];
          }
        }
        chance[i] = product;
      }
    }
    for (int y = chances.length - 1; y > 0; y--) {
      for (int i = 0; i < sets.length; i++) {
        chances[y][i] = Math.max(0, chances[y][i] - chances[y - 1][i]);
      }
    }
    return chances;
  }

  /** Sum of weight times chance over the outcomes, under some sets of causes. */
  double[] mixed(int[][] sets, double[] weights) {
    double[] mixed = new double[sets.length];
    for (int i = 0; i < sets.length; i++) {
      double[] row = outcomeChances(sets[i]);
      for (int y = 0; y < row.length; y++) {
        mixed[i] += weights[y] * row[y];
      }
    }
    return mixed;
  }

  /** Chance of each outcome when exactly these causes are present. */
  public double[] outcomeChances(int... present) {
    double[] chances = base.clone();
    for (int cause : present) {
      double[] row = row(cause);
      for (int y = 0; row != null && y < chances.length; y++) {
        chances[y] *= row[y];
      }
    }
    for (int y = chances.length - 1; y > 0; y--) {
      chances[y] = Math.max(0, chances[y] - chances[y - 1]);
    }
    return chances;
  }
}
