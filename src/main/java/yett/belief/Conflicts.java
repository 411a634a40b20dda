package yett.belief;

import java.util.ArrayList;
import java.util.List;

/**
 * Measures how badly observations fit together: conf = log2 (prod P(e_i) / P(e_1, ..., e_n)) bits,
 * the measure of Jensen, Chamberlain, Nordahl and Jensen (1990; from memory). Observations with a
 * common cause make each other more probable, so it is negative on average. If the model is right,
 * it reaches k bits in at most one of 2^k cases, because the mean of the ratio is 1.
 */
public final class Conflicts {
  /**
   * Conflict (bits) from which it is reported: ten times less probable together than if
   * independent.
   */
  public static final double TOLD = Math.log(10) / Math.log(2);

  /** Largest conflict (bits) distinguished; the observations exclude each other. */
  public static final double MOST = 60;

  /** Largest set that is searched for; more observations are hard for a person to compare. */
  private static final int LARGEST = 5;

  private Conflicts() {}

  /**
   * The conflict (bits) between two chances: that of the observations if independent, and that of
   * all together.
   */
  public static double bits(double apart, double together) {
    if (!(together > 0)) {
      return MOST;
    }
    return Math.min(MOST, (Math.log(apart) - Math.log(together)) / Math.log(2));
  }

  /** The conflict among some observations, given the belief before them. */
  public static double of(Belief before, List<Observation> observations) {
    double bits = 0;
    Belief belief = before;
    for (Observation o : observations) {
      double together = belief.chanceOf(o);
      bits += bits(before.chanceOf(o), together);
      if (!(together > 0)) {
        return MOST;
      }
      belief = belief.learn(o);
    }
    return Math.min(MOST, bits);
  }

  /**
   * Finds a small set of observations in conflict that contains a given one. It adds the
   * observation that increases the conflict most until there is a conflict, then drops those that
   * are not needed. So no member can be left out, but there may be another set as small.
   *
   * @param named numbers of the observations that may be in the set
   * @param with the number of the one that is in it
   * @return numbers in ascending order; empty if no such set is in conflict
   */
  public static List<Integer> smallest(
      Belief before, List<Observation> observations, List<Integer> named, int with) {
    List<Integer> set = new ArrayList<>(List.of(with));
    double[] apart =
        named.stream().mapToDouble(i -> before.chanceOf(observations.get(i))).toArray();
    if (!(before.chanceOf(observations.get(with)) > 0)) {
      return set;
    }
    Belief belief = before.learn(observations.get(with));
    double bits = 0;
    while (bits < TOLD && set.size() < LARGEST) {
      int best = -1;
      double most = 0;
      for (int k = 0; k < apart.length; k++) {
        if (!set.contains(named.get(k)) && apart[k] > 0) {
          double more = bits(apart[k], belief.chanceOf(observations.get(named.get(k))));
          if (more > most) {
            best = named.get(k);
            most = more;
          }
        }
      }
      if (best < 0) {
        return List.of();
      }
      set.add(best);
      bits += most;
      belief = most < MOST ? belief.learn(observations.get(best)) : belief;
    }
    return bits < TOLD ? List.of() : shrunk(before, observations, set);
  }

  private static List<Integer> shrunk(
      Belief before, List<Observation> observations, List<Integer> grown) {
    List<Integer> set = new ArrayList<>(grown);
    for (int k = set.size() - 2; k > 0 && set.size() > 2; k--) {
      List<Integer> less = new ArrayList<>(set);
      less.remove(k);
      if (of(before, less.stream().map(observations::get).toList()) >= TOLD) {
        set = less;
      }
    }
    return set.stream().sorted().toList();
  }
}
