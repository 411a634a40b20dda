package yett.belief;

import java.util.Arrays;
import java.util.List;

/**
 * Sets of causes, each stored as its parent set and one later cause, so that a product over causes
 * takes one multiplication for each set. With a set, all its subsets are included, so the set that
 * remains after a repair is always there. Hypothesis 0 is the empty set; smaller sets come first,
 * and sets of equal size are in lexicographic order.
 */
public final class Lattice {
  private final int causes;
  private final int depth;

  /**
   * For each hypothesis, its parent in the upper 32 bits and its last cause in the lower;
   * ascending.
   */
  private final long[] keys;

  private Lattice(int causes, int depth, long[] keys) {
    this.causes = causes;
    this.depth = depth;
    this.keys = keys;
  }

  private static long key(int parent, int last) {
    return (long) parent << 32 | last;
  }

  /**
   * All sets of at most {@code depth} of {@code causes} causes.
   *
   * @throws IllegalArgumentException if there would be more sets than an array can hold
   */
  public static Lattice of(int causes, int depth) {
    int levels = Math.min(depth, causes);
    double count = count(causes, levels);
    if (count > Integer.MAX_VALUE - 8) {
      throw new IllegalArgumentException(
          "too many sets of at most " + depth + " of " + causes + " causes");
    }
    long[] keys = new long[(int) count];
    keys[0] = -1;
    int next = 1;
    int levelStart = 0;
    for (int level = 0; level < levels; level++) {
      int levelEnd = next;
      for (int h = levelStart; h < levelEnd; h++) {
        for (int c = (int) keys[h] + 1; c < causes; c++) {
          keys[next++] = key(h, c);
        }
      }
      levelStart = levelEnd;
    }
    return new Lattice(causes, levels, keys);
  }

  /** Number of sets of at most {@code depth} of {@code causes} causes. */
  private static double count(int causes, int depth) {
    double total = 0;
    double binomial = 1;
    for (int k = 0; k <= depth; k++) {
      total += binomial;
      binomial = binomial * (causes - k) / (k + 1);
    }
    return total;
  }

  /**
   * These sets and all their subsets.
   *
   * @param whole causes of each set, ascending; all of its subsets are among these sets too
   * @param others causes of each further set, ascending; no set twice
   */
  static Lattice closing(int causes, List<int[]> whole, List<int[]> others) {
    SetIndex index = SetIndex.closing(causes, whole, others);
    int[] starts = new int[index.largest() + 2];
    for (int i = 0; i < index.size(); i++) {
      starts[index.set(i).length + 1]++;
    }
    Arrays.parallelPrefix(starts, Integer::sum);
    int[] next = starts.clone();
    int[] bySize = new int[index.size()];
    for (int i = 0; i < bySize.length; i++) {
      bySize[next[index.set(i).length]++] = i;
    }
    long[] keys = new long[index.size()];
    keys[0] = -1;
    int[] places = new int[keys.length];
    int[] last = new int[keys.length];
    int[] parent = new int[keys.length];
    for (int level = 1; level <= index.largest(); level++) {
      int from = starts[level];
      int[] sets = Arrays.copyOfRange(bySize, from, starts[level + 1]);
      for (int set : sets) {
        last[set] = index.set(set)[level - 1];
        parent[set] = places[index.without(set, level - 1)];
      }
      int[] sorted = sorted(sorted(sets, last, causes), parent, from);
      for (int i = 0; i < sorted.length; i++) {
        keys[from + i] = key(parent[sorted[i]], last[sorted[i]]);
        places[sorted[i]] = from + i;
      }
    }
    return new Lattice(causes, index.largest(), keys);
  }

  /** Numbers in the order of a rank below {@code ranks}; of equal rank, in the order given. */
  private static int[] sorted(int[] numbers, int[] rank, int ranks) {
    int[] next = new int[ranks + 1];
    for (int number : numbers) {
      next[rank[number] + 1]++;
    }
    for (int r = 0; r < ranks; r++) {
      next[r + 1] += next[r];
    }
    int[] sorted = new int[numbers.length];
    for (int number : numbers) {
      sorted[next[rank[number]]++] = number;
    }
    return sorted;
  }

  public int size() {
    return keys.length;
  }

  int causes() {
    return causes;
  }

  /** Size of the largest set. */
  public int depth() {
    return depth;
  }

  int parent(int hypothesis) {
    return (int) (keys[hypothesis] >> 32);
  }

  int last(int hypothesis) {
    return (int) keys[hypothesis];
  }

  /**
   * Writes the causes of a hypothesis, the latest first.
   *
   * @return how many there are
   */
  int members(int hypothesis, int[] into) {
    int count = 0;
    for (int h = hypothesis; h != 0; h = parent(h)) {
      into[count++] = last(h);
    }
    return count;
  }

  /** The causes of a hypothesis in ascending order. */
  public int[] members(int hypothesis) {
    int[] members = new int[depth];
    int count = members(hypothesis, members);
    int[] sorted = Arrays.copyOf(members, count);
    Arrays.sort(sorted);
    return sorted;
  }

  boolean contains(int hypothesis, int cause) {
    for (int h = hypothesis; h != 0 && last(h) >= cause; h = parent(h)) {
      if (last(h) == cause) {
        return true;
      }
    }
    return false;
  }

  /** The hypothesis without one of its causes. */
  int without(int hypothesis, int cause) {
    int h = 0;
    for (int member : members(hypothesis)) {
      if (member != cause) {
        h = Arrays.binarySearch(keys, h + 1, keys.length, key(h, member));
      }
    }
    return h;
  }
}
