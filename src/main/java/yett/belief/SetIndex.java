package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Numbers sets of causes, and finds a set without one of its causes. The hash of a set is a sum
 * over its causes, so that of a subset takes one subtraction.
 */
final class SetIndex {
  private final long[] scattered;
  private final List<int[]> sets;
  private long[] hashes;

  /** Hash table with open addressing: a set's number plus 1, or 0 if free. */
  private int[] slots;

  private int largest;

  private SetIndex(int causes, int expected) {
    scattered = new long[causes];
    Arrays.setAll(scattered, c -> scatter(c + 1L));
    sets = new ArrayList<>(expected);
    hashes = new long[expected];
    slots = new int[Integer.highestOneBit(4 * expected)];
  }

  /**
   * An index of the empty set (number 0), these sets and all their subsets.
   *
   * @param whole causes of each set, ascending; all of its subsets are among these sets too
   * @param others causes of each further set, ascending; none twice
   */
  static SetIndex closing(int causes, List<int[]> whole, List<int[]> others) {
    SetIndex index = new SetIndex(causes, whole.size() + others.size() + 16);
    index.add(new int[0]);
    whole.stream().filter(s -> s.length > 0).forEach(index::add);
    int closed = index.size();
    others.stream().filter(s -> s.length > 0).forEach(index::add);
    for (int i = closed; i < index.size(); i++) {
      for (int k = 0; k < index.set(i).length; k++) {
        if (index.without(i, k) < 0) {
          index.add(less(index.set(i), k));
        }
      }
    }
    return index;
  }

  int size() {
    return sets.size();
  }

  /** Size of the largest set. */
  int largest() {
    return largest;
  }

  /** The causes of a set. Callers must not change the array. */
  int[] set(int number) {
    return sets.get(number);
  }

  /** Number of a set without the cause at a position in it; -1 if there is no such set. */
  int without(int number, int position) {
    int[] set = sets.get(number);
    long hash = hashes[number] - scattered[set[position]];
    int at = (int) hash & slots.length - 1;
    for (; slots[at] != 0; at = at + 1 & slots.length - 1) {
      int found = slots[at] - 1;
      if (hashes[found] == hash && isWithout(sets.get(found), set, position)) {
        return found;
      }
    }
    return -1;
  }

  private static boolean isWithout(int[] less, int[] set, int position) {
    boolean same = less.length == set.length - 1;
    for (int k = 0; same && k < less.length; k++) {
      same = less[k] == set[k < position ? k : k + 1];
    }
    return same;
  }

  private static int[] less(int[] set, int position) {
    int[] less = Arrays.copyOf(set, set.length - 1);
    System.arraycopy(set, position + 1, less, position, less.length - position);
    return less;
  }

  private void add(int[] set) {
    long hash = 0;
    for (int c : set) {
      hash += scattered[c];
    }
    if (sets.size() == hashes.length) {
      hashes = Arrays.copyOf(hashes, 2 * hashes.length);
    }
    hashes[sets.size()] = hash;
    sets.add(set);
    largest = Math.max(largest, set.length);
    if (2 * sets.size() > slots.length) {
      slots = new int[2 * slots.length];
      for (int i = 0; i < sets.size(); i++) {
        place(i);
      }
    } else {
      place(sets.size() - 1);
    }
  }

  private void place(int number) {
    int at = (int) hashes[number] & slots.length - 1;
    while (slots[at] != 0) {
      at = at + 1 & slots.length - 1;
    }
    slots[at] = number + 1;
  }

  /** Scatters the bits of a number (the finalizer of SplitMix64; Steele, Lea and Flood 2014). */
  private static long scatter(long z) {
    long a = (z ^ z >>> 30) * 0xbf58476d1ce4e5b9L;
    long b = (a ^ a >>> 27) * 0x94d049bb133111ebL;
    return b ^ b >>> 31;
  }
}
