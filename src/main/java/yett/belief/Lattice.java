package yett.belief;

import java.util.Arrays;

/**
 * All sets of at most {@code depth} of {@code causes} causes, each one as its parent set and one
 * later cause, so that what factors over causes is worked out with one multiplication a set.
 * Hypothesis 0 is the empty set; sets of one size follow each other in lexicographic order.
 */
public final class Lattice {
  private final int causes;
  private final int depth;
  private final int[] parent;
  private final int[] last;
  private final int[] firstChild;

  private Lattice(int causes, int depth, int[] parent, int[] last, int[] firstChild) {
    this.causes = causes;
    this.depth = depth;
    this.parent = parent;
    this.last = last;
    this.firstChild = firstChild;
  }

  /** Number of sets of at most {@code depth} of {@code causes}; saturates at Long.MAX_VALUE. */
  static long count(int causes, int depth) {
    double total = 0;
    double binomial = 1;
    for (int k = 0; k <= Math.min(depth, causes); k++) {
      total += binomial;
      binomial = binomial * (causes - k) / (k + 1);
    }
    return total >= Long.MAX_VALUE ? Long.MAX_VALUE : Math.round(total);
  }

  /**
   * @throws IllegalArgumentException if there would be more sets than an array can hold
   */
  public static Lattice of(int causes, int depth) {
    int levels = Math.min(depth, causes);
    long count = count(causes, levels);
    if (count > Integer.MAX_VALUE - 8) {
      throw new IllegalArgumentException(
          "too many sets of at most " + depth + " of " + causes + " causes");
    }
    int size = (int) count;
    int[] parent = new int[size];
    int[] last = new int[size];
    int[] firstChild = new int[size];
    Arrays.fill(firstChild, -1);
    last[0] = -1;
    int next = 1;
    int levelStart = 0;
    for (int level = 0; level < levels; level++) {
      int levelEnd = next;
      for (int h = levelStart; h < levelEnd; h++) {
        firstChild[h] = next;
        for (int c = last[h] + 1; c < causes; c++) {
          parent[next] = h;
          last[next] = c;
          next++;
        }
      }
      levelStart = levelEnd;
    }
    return new Lattice(causes, levels, parent, last, firstChild);
  }

  public int size() {
    return parent.length;
  }

  int causes() {
    return causes;
  }

  public int depth() {
    return depth;
  }

  int parent(int hypothesis) {
    return parent[hypothesis];
  }

  int last(int hypothesis) {
    return last[hypothesis];
  }

  /**
   * Writes the causes of a hypothesis, the latest first.
   *
   * @return how many there are
   */
  int members(int hypothesis, int[] into) {
    int count = 0;
    for (int h = hypothesis; h != 0; h = parent[h]) {
      into[count++] = last[h];
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
    for (int h = hypothesis; h != 0 && last[h] >= cause; h = parent[h]) {
      if (last[h] == cause) {
        return true;
      }
    }
    return false;
  }

  /** The hypothesis with exactly these causes, which must be ascending. */
  int find(int[] members, int count) {
    int h = 0;
    for (int i = 0; i < count; i++) {
      h = firstChild[h] + members[i] - last[h] - 1;
    }
    return h;
  }

  /** The hypothesis without one of its causes. */
  int without(int hypothesis, int cause) {
    int[] members = members(hypothesis);
    int count = 0;
    for (int member : members) {
      if (member != cause) {
        members[count++] = member;
      }
    }
    return find(members, count);
  }
}
