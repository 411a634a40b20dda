package yett.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * The set-ups and the cost of changing between them. A state is the set of set-ups in force, as
 * bits.
 */
final class Workshop {
  /** A set-up as the plan uses it; costs in minutes including the penalty for hazards. */
  record Stand(String id, double enter, double leave, List<String> within, List<String> excludes) {}

  private final List<String> ids = new ArrayList<>();
  private final double[] enter;
  private final double[] leave;
  private final int[] within;
  private final int[] excludes;

  Workshop(List<Stand> stands) {
    if (stands.size() > 30) {
      throw new IllegalArgumentException("more than 30 set-ups: " + stands.size());
    }
    stands.forEach(s -> ids.add(s.id()));
    enter = stands.stream().mapToDouble(Stand::enter).toArray();
    leave = stands.stream().mapToDouble(Stand::leave).toArray();
    within = stands.stream().mapToInt(s -> bits(s.within())).toArray();
    excludes = new int[stands.size()];
    for (int i = 0; i < excludes.length; i++) {
      for (String other : stands.get(i).excludes()) {
        int j = ids.indexOf(other);
        if (j >= 0) {
          excludes[i] |= 1 << j;
          excludes[j] |= 1 << i;
        }
      }
    }
  }

  /**
   * The state in which these set-ups and those within which they are entered are in force. Unknown
   * ids are ignored.
   */
  int state(Collection<String> setUps) {
    int state = bits(setUps);
    int before;
    do {
      before = state;
      for (int i = 0; i < within.length; i++) {
        if ((state >> i & 1) != 0) {
          state |= within[i];
        }
      }
    } while (state != before);
    return state;
  }

  private int bits(Collection<String> setUps) {
    int bits = 0;
    for (String id : setUps) {
      int i = ids.indexOf(id);
      if (i >= 0) {
        bits |= 1 << i;
      }
    }
    return bits;
  }

  List<String> names(int state) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < ids.size(); i++) {
      if ((state >> i & 1) != 0) {
        names.add(ids.get(i));
      }
    }
    return names;
  }

  /**
   * The set-ups to leave before all needed ones can be in force together: those that they exclude,
   * and those entered within them.
   */
  int leaving(int state, int needs) {
    int left = 0;
    for (int rest = needs; rest != 0; rest &= rest - 1) {
      left |= excludes[Integer.numberOfTrailingZeros(rest)];
    }
    left &= state;
    int before = 0;
    while (left != before) {
      before = left;
      for (int rest = state & ~left; rest != 0; rest &= rest - 1) {
        int i = Integer.numberOfTrailingZeros(rest);
        if ((within[i] & left) != 0) {
          left |= 1 << i;
        }
      }
    }
    return left & ~needs;
  }

  int after(int state, int needs) {
    return state & ~leaving(state, needs) | needs;
  }

  /** The cost of changing from a state to one in which the needed set-ups are in force. */
  double change(int state, int needs) {
    return sum(leave, leaving(state, needs)) + sum(enter, needs & ~state);
  }

  /** The cost of leaving all set-ups. */
  double close(int state) {
    return sum(leave, state);
  }

  private static double sum(double[] costs, int bits) {
    double sum = 0;
    for (int rest = bits; rest != 0; rest &= rest - 1) {
      sum += costs[Integer.numberOfTrailingZeros(rest)];
    }
    return sum;
  }

  @Override
  public String toString() {
    return ids + " " + Arrays.toString(enter) + Arrays.toString(leave);
  }
}
