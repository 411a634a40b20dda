package yett.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Evaluates looks before a step that needs a set-up. In a search of only a few steps, a look from
 * outside takes the place of a more telling check, so work behind a lock-off seems to save more
 * than it does. Here a look comes first, then other looks at its place as far as they pay, then
 * that step, searched as deeply as if it came at once.
 */
record Beforehand(Scene scene, Search search) {
  /**
   * Minutes by which a look may cost more than entering the set-up at once and still comes first.
   */
  static final double EVEN = 3;

  /** Number of looks that are tried first, and of other looks at the place with each. */
  private static final int LOOKS = 4;

  private static final int OTHERS = 2;

  /** Chance below which an answer is not followed further. */
  private static final double RARE = 0.02;

  /**
   * For each look, the expected cost until the end if it comes first.
   *
   * @param ranked next steps, the best first
   * @param leader the best
   * @param depth search depth for the best step
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

  /** Evaluates looks at one place made one after the other, and then the step that they precede. */
  private final class Round {
    private final int leader;
    private final int depth;

    Round(int leader, int depth) {
      this.leader = leader;
      this.depth = depth;
    }

    /**
     * The expected cost.
     *
     * @param looks the first is made, the others if they pay
     * @param share chance of getting this far
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
