package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Lists the most probable sets of causes before any observation: all sets above a limit, which is
 * lowered until the sets left out have less than a given total chance, or until there are too many.
 *
 * <p>The search builds every set in exactly one way: first the causes that no other member brings
 * about, the most probable first; then those that are brought about, each after a cause that brings
 * it about. Leaving aside the factor for what a set could have brought about and did not, its
 * chance falls with every added cause, apart from a known slack; so whole branches can be cut.
 * Chances are relative to that of no cause at all.
 */
final class Enumeration {
  private static final double STEP = 0.4;

  /** Relative difference below which two chances count as equal; such sets are listed together. */
  private static final double SAME = 1e-9;

  /** A factor that is below 1 by more than rounding. */
  private static final double CLEARLY = 0.99;

  private final CausalModel model;
  private final int most;

  /** Causes with a prior of their own, the most probable first. */
  private final int[] ranked;

  private final double[] odds;

  /**
   * By rank: the largest factor by which this cause and later ones can raise a set's chance,
   * without what they bring about.
   */
  private final double[] rise;

  /** The largest factor by which causes that are brought about can raise a set's chance. */
  private final double slack;

  /** By cause, the largest factor by which it can raise a set's chance if it is brought about. */
  private final double[] raises;

  /** By cause, those that it brings about, the one first that can raise a set's chance most. */
  private final int[][] children;

  /** By cause, the chance that it brings about nothing. */
  private final double[] barren;

  private final int[] order;
  private final boolean[] present;
  private final int[] members;

  /** By cause, how many of those it brings about were added after it. */
  private final int[] brings;

  /** By cause, its prior and the chances with which members bring it about: at least its chance. */
  private final double[] sums;

  /** By cause that is there, its position among the members. */
  private final int[] places;

  private int size;
  private double limit;
  private boolean tooMany;

  /** The listed sets: chance of each, end of its causes in the list of causes, and that list. */
  private double[] chances = new double[1024];

  private int[] ends = new int[1024];
  private int[] causes = new int[4096];
  private int listed;
  private double sum;

  private Enumeration(CausalModel model, int most) {
    this.model = model;
    this.most = most;
    int n = model.size();
    odds = IntStream.range(0, n).mapToDouble(c -> odds(model.prior(c))).toArray();
    ranked =
        IntStream.range(0, n)
            .filter(c -> odds[c] > 0)
            .boxed()
            .sorted(Comparator.<Integer>comparingDouble(c -> -odds[c]).thenComparing(c -> c))
            .mapToInt(Integer::intValue)
            .toArray();
    order = model.order();
    rise = new double[ranked.length];
    double later = 1;
    for (int r = ranked.length - 1; r >= 0; r--) {
      rise[r] = odds[ranked[r]] * later;
      later = Math.max(1, odds[ranked[r]]) * later;
    }
    present = new boolean[n];
    raises = new double[n];
    barren = new double[n];
    double brought = 1;
    for (int c = 0; c < n; c++) {
      raises[c] = model.greatestChance(c) / (1 - model.prior(c));
      barren[c] = model.bringsNothingMore(c, present);
      brought *= Math.max(1, raises[c]);
    }
    slack = brought;
    children = new int[n][];
    for (int c = 0; c < n; c++) {
      children[c] =
          Arrays.stream(model.children(c))
              .boxed()
              .sorted(Comparator.comparingDouble(d -> -raises[d]))
              .mapToInt(Integer::intValue)
              .toArray();
    }
    brings = new int[n];
    sums = IntStream.range(0, n).mapToDouble(model::prior).toArray();
    members = new int[n];
    places = new int[n];
  }

  private static double odds(double chance) {
    return chance / (1 - chance);
  }

  /**
   * @param leftOut share that may be left out of the chance that some cause is present
   * @param most about how many sets may be listed; their subsets are listed in any case
   */
  static Lattice mostProbable(CausalModel model, double leftOut, int most) {
    return mostProbable(model, leftOut, most, new Likely());
  }

  /**
   * The same, beginning where the listing for another gate ended. The result does not depend on it.
   */
  static Lattice mostProbable(CausalModel model, double leftOut, int most, Likely likely) {
    double nothing = model.nothing();
    double some = (1 - nothing) / nothing;
    double goal = leftOut > 0 ? (1 - leftOut) * some : Double.POSITIVE_INFINITY;
    Enumeration all = new Enumeration(model, most);
    int lowered = all.list(goal, all.lowered(likely.least() * some));
    double least = all.least(goal, all.limit(lowered - 1));
    likely.least(least / some);
    return all.from(least * (1 - SAME));
  }

  /**
   * Lists the most probable sets that together reach a chance, or as many as there may be: those
   * above the first limit that is low enough. If there are too many above that one, the limit
   * before it is taken.
   *
   * @param from how often the limit has been lowered where the search for it begins
   * @return how often it was lowered
   */
  private int list(double goal, int from) {
    int lowered = from;
    boolean tooManyBelow = false;
    listAll(lowered);
    while (tooMany || !tooManyBelow && !enough(goal)) {
      tooManyBelow |= tooMany;
      lowered += tooMany ? -1 : 1;
      listAll(lowered);
    }
    while (lowered > 1 && enough(goal) && isEnoughAbove(limit(lowered - 1), goal)) {
      keepAbove(limit(--lowered));
    }
    return lowered;
  }

  /** Whether the listed sets above a higher limit would have been enough. */
  private boolean isEnoughAbove(double higher, double goal) {
    int count = 0;
    double total = 0;
    for (int i = 0; i < listed; i++) {
      if (chances[i] >= higher) {
        count++;
        total += chances[i];
      }
    }
    return total >= goal || count >= most;
  }

  /** Takes out the listed sets below a higher limit; what is left is as if listed with it. */
  private void keepAbove(double higher) {
    int kept = 0;
    int end = 0;
    int start = 0;
    sum = 0;
    for (int i = 0; i < listed; i++) {
      int next = ends[i];
      if (chances[i] >= higher) {
        System.arraycopy(causes, start, causes, end, next - start);
        end += next - start;
        ends[kept] = end;
        chances[kept++] = chances[i];
        sum += chances[i];
      }
      start = next;
    }
    listed = kept;
    limit = higher;
  }

  private boolean enough(double goal) {
    return sum >= goal || listed >= most || !(limit > 0);
  }

  private double limit(int lowered) {
    double lower = rise.length == 0 ? 0 : rise[0] * slack;
    for (int i = 0; i < lowered; i++) {
      lower = lower < Double.MIN_NORMAL ? 0 : lower * STEP;
    }
    return lower;
  }

  /** How often the limit has to be lowered until it is at most this; 1 if that is not known. */
  private int lowered(double least) {
    int lowered = 1;
    while (least > 0 && limit(lowered) > least) {
      lowered++;
    }
    return lowered;
  }

  private void listAll(int lowered) {
    limit = limit(lowered);
    listAll();
  }

  /** Lists all sets above the limit. */
  private void listAll() {
    listed = 0;
    sum = 0;
    tooMany = false;
    free(0, 1);
  }

  /** Adds causes that no other member brings about. */
  private void free(int from, double chance) {
    offer(chance);
    brought(-1, chance);
    for (int r = from; r < ranked.length && !tooMany; r++) {
      if (chance * rise[r] * slack < limit) { // all later ones are below it too
        return;
      }
      int cause = ranked[r];
      if (!linked(cause)) {
        add(cause);
        free(r + 1, chance * odds[cause]);
        remove(cause);
      }
    }
  }

  /** Adds causes that members of the set bring about, each after a cause that brings it about. */
  private void brought(int after, double chance) {
    int count = size;
    for (int i = 0; i < count && !tooMany; i++) {
      for (int child : children[members[i]]) {
        if (chance * raises[child] * slack * (1 + SAME) < limit) {
          break; // the others can raise it even less
        }
        if (order[child] > after
            && chance * (sums[child] + SAME) * slack >= limit * (1 - model.prior(child))
            && isFirstParent(i, child)
            && !bringsFree(child)) {
          double with = chance * model.presence(child, present);
          if (with > 0 && with * slack >= limit) {
            add(child);
            count(child, 1);
            offer(with);
            brought(order[child], with);
            count(child, -1);
            remove(child);
          }
        }
      }
    }
  }

  private boolean linked(int cause) {
    return any(model.children(cause)) || any(model.parents(cause));
  }

  private boolean any(int[] causes) {
    for (int c : causes) {
      if (present[c]) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether the cause at a position of the set, which brings this one about, is the first to do so,
   * and this one is not there itself.
   */
  private boolean isFirstParent(int position, int child) {
    if (present[child]) {
      return false;
    }
    for (int parent : model.parents(child)) {
      if (present[parent] && places[parent] < position) {
        return false;
      }
    }
    return true;
  }

  /** Whether a cause brings about a member that was added as free, which would then not be free. */
  private boolean bringsFree(int cause) {
    return any(model.children(cause));
  }

  private void bring(int cause, int times) {
    int[] brought = model.children(cause);
    double[] with = model.childChances(cause);
    for (int k = 0; k < brought.length; k++) {
      sums[brought[k]] += times * with[k];
    }
  }

  private void add(int cause) {
    bring(cause, 1);
    present[cause] = true;
    places[cause] = size;
    members[size++] = cause;
  }

  private void remove(int cause) {
    bring(cause, -1);
    present[cause] = false;
    size--;
  }

  private void count(int child, int more) {
    for (int parent : model.parents(child)) {
      brings[parent] += more;
    }
  }

  private void offer(double chance) {
    if (chance < limit) {
      return; // what it could have brought about and did not makes it only less
    }
    double all = chance;
    for (int i = 0; i < size; i++) {
      int member = members[i];
      all *= brings[member] == 0 ? barren[member] : model.bringsNothingMore(member, present);
    }
    if (size == 0 || !(all > 0) || all < limit || tooMany) {
      return;
    }
    if (listed == 4 * most) {
      tooMany = true;
      return;
    }
    int start = listed == 0 ? 0 : ends[listed - 1];
    if (listed == ends.length) {
      ends = Arrays.copyOf(ends, 2 * listed);
      chances = Arrays.copyOf(chances, 2 * listed);
    }
    if (start + size > causes.length) {
      causes = Arrays.copyOf(causes, 2 * causes.length + size);
    }
    System.arraycopy(members, 0, causes, start, size);
    ends[listed] = start + size;
    chances[listed] = all;
    sum += all;
    listed++;
  }

  /**
   * The least chance of the most probable listed sets, as many as are needed to reach a chance
   * together, or as there may be.
   *
   * @param sure those above it are not enough, so that only the others have to be sorted
   */
  private double least(double goal, double sure) {
    double[] falling = new double[listed];
    int count = 0;
    double reached = 0;
    for (int i = 0; i < listed; i++) {
      if (chances[i] >= sure) {
        reached += chances[i];
      } else {
        falling[count++] = chances[i];
      }
    }
    int room = most - (listed - count);
    if (room <= 0 || reached >= goal) { // too many are as probable: sort all
      falling = Arrays.copyOf(chances, listed);
      count = listed;
      room = most;
      reached = 0;
    }
    Arrays.sort(falling, 0, count);
    double least = 0;
    for (int i = count - 1; i >= Math.max(0, count - room) && reached < goal; i--) {
      least = falling[i];
      reached += least;
    }
    return least;
  }

  /** The listed sets of at least a chance, with their subsets. */
  private Lattice from(double least) {
    List<int[]> whole = new ArrayList<>();
    List<int[]> others = new ArrayList<>();
    for (int i = 0; i < listed; i++) {
      if (chances[i] >= least) {
        int[] set = Arrays.copyOfRange(causes, i == 0 ? 0 : ends[i - 1], ends[i]);
        Arrays.sort(set);
        (isLessLikelyThanItsSubsets(set) ? whole : others).add(set);
      }
    }
    return Lattice.closing(model.size(), whole, others);
  }

  /** Whether each cause lowers the chance of the set clearly, so that all subsets are kept too. */
  private boolean isLessLikelyThanItsSubsets(int[] set) {
    for (int cause : set) {
      present[cause] = true;
    }
    boolean lower = true;
    for (int cause : set) {
      lower &= odds[cause] * barren[cause] < CLEARLY && !linked(cause);
    }
    for (int cause : set) {
      present[cause] = false;
    }
    return lower;
  }
}
