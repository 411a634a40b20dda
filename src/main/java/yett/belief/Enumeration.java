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

  private final int[] order;
  private final boolean[] present;
  private final int[] members;

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
    double brought = 1;
    for (int c = 0; c < n; c++) {
      brought *= Math.max(1, model.greatestChance(c) / (1 - model.prior(c)));
    }
    slack = brought;
    present = new boolean[n];
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
    double goal = leftOut > 0 ? (1 - leftOut) * (1 - nothing) / nothing : Double.POSITIVE_INFINITY;
    Enumeration all = new Enumeration(model, most);
    int lowered = all.list(goal, Math.max(1, likely.lowered()));
    likely.lowered(lowered);
    return Lattice.closing(model.size(), all.cut(goal));
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
      for (int child : model.children(members[i])) {
        if (order[child] > after && isFirstParent(i, child) && !bringsFree(child)) {
          double with = chance * model.presence(child, present);
          if (with > 0 && with * slack >= limit) {
            add(child);
            offer(with);
            brought(order[child], with);
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

  private void add(int cause) {
    present[cause] = true;
    places[cause] = size;
    members[size++] = cause;
  }

  private void remove(int cause) {
    present[cause] = false;
    size--;
  }

  private void offer(double chance) {
    double all = chance;
    for (int i = 0; i < size; i++) {
      all *= model.bringsNothingMore(members[i], present);
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

  /** The most probable listed sets: as many as needed, and those equal to the last. */
  private List<int[]> cut(double goal) {
    double[] falling = Arrays.copyOf(chances, listed);
    Arrays.sort(falling);
    double reached = 0;
    double least = 0;
    for (int i = listed - 1; i >= Math.max(0, listed - most) && reached < goal; i--) {
      least = falling[i];
      reached += least;
    }
    List<int[]> kept = new ArrayList<>();
    for (int i = 0; i < listed; i++) {
      if (chances[i] >= least * (1 - SAME)) {
        int[] set = Arrays.copyOfRange(causes, i == 0 ? 0 : ends[i - 1], ends[i]);
        Arrays.sort(set);
        kept.add(set);
      }
    }
    return kept;
  }
}
