package yett.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks before a step that costs a set-up. Counted as one of a few steps ahead, a look from outside
 * takes the place of a telling check, and whatever lies behind a lock-off seems to save more. So
 * here a look comes first, other looks of its place as far as they pay, and then that step, looked
 * into as far as if it came at once.
 */
record Beforehand(Scene scene, Search search) {
  /** Minutes too few to enter a set-up for before what is seen without it was looked at. */
  static final double EVEN = 3;

  /** Looks that are tried, and others of the place with each. */
  private static final int LOOKS = 4;

  private static final int OTHERS = 2;

  /** Answers that are rarer are not followed further. */
  private static final double RARE = 0.02;

  /**
   * By look, the expected cost until the end if it comes first.
   *
   * @param ranked next steps, the best first
   * @param leader the best
   * @param depth how far ahead it is looked into
   */
  Map<Integer, Double> values(
      List<Search.Ranked> ranked, int leader, double[] weights, int state, int depth) {
    double change = change(leader, state);
    List<Integer> looks =
        ranked.stream()
            .map(Search.Ranked::check)
            .filter(c -> place(c) >= 0 && change(c, state) < change)
            .toList();
    double further = ranked.get(0).value() - search.asking(leader, weights, state, depth, 0);
    Map<Integer, Double> values = new HashMap<>();
    for (int look : looks.subList(0, Math.min(LOOKS, looks.size()))) {
      List<Integer> round = new ArrayList<>(List.of(look));
      looks.stream()
          .filter(c -> c != look && place(c) == place(look))
          .limit(OTHERS)
          .forEach(round::add);
      search.at(place(look));
      double value = new Round(leader, depth).value(round, weights, state, 1, 0);
      values.put(look, value + scene.checks().get(look).along() + further);
    }
    search.at(-1);
    return values;
  }

  private int place(int check) {
    return scene.checks().get(check).place();
  }

  private double change(int check, int state) {
    return scene.workshop().change(state, scene.checks().get(check).needs());
  }

  /** Looks of a place one after the other, and the step that they come before. */
  private final class Round {
    private final int leader;
    private final int depth;

    Round(int leader, int depth) {
      this.leader = leader;
      this.depth = depth;
    }

    /**
     * @param looks the first is made, the others if they pay
     * @param share how often it comes to that
     */
    double value(List<Integer> looks, double[] weights, int state, double share, long path) {
      Scene.Look look = scene.checks().get(looks.get(0));
      int after = scene.workshop().after(state, look.needs());
      double value = search.cost(looks.get(0), state);
      for (int y = 0; y < look.chances().length; y++) {
        double[] then = new double[weights.length];
        double chance = Search.posterior(weights, look.chances()[y], then);
        if (chance > 0) {
          long further = path + Search.mix(looks.get(0) * 64L + y + 1);
          value += chance * after(looks, then, after, share * chance, further);
        }
      }
      return value;
    }

    private double after(
        List<Integer> looks, double[] weights, int state, double share, long path) {
      double least = search.order(weights, state, path);
      if (share >= RARE) {
        least = Math.min(least, search.asking(leader, weights, state, depth, path));
        for (int i = 1; i < looks.size(); i++) {
          List<Integer> rest = looks.subList(i, looks.size());
          least = Math.min(least, value(rest, weights, state, share, path));
        }
      }
      return least;
    }
  }
}
