package yett.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import yett.belief.Belief;
import yett.belief.Support;

/** Works out how much information checks would give about the causes, without regard to cost. */
public final class Telling {
  private Telling() {}

  /**
   * A check with its information.
   *
   * @param bits mutual information of its outcome and the sets of causes (Shannon 1948)
   */
  public record Told(String check, double bits) {}

  /**
   * The information in each of some checks, the most informative first.
   *
   * @param checks ids; none twice
   */
  public static List<Told> of(Belief belief, Collection<String> checks) {
    Support support = belief.support(Planner.MASS, Planner.MOST);
    boolean[] present = support.present(belief.model().size());
    double[] weights = support.weights();
    List<Told> told = new ArrayList<>();
    for (String check : checks) {
      if (belief.couldTell(check, present)) {
        told.add(new Told(check, bits(belief.predict(check, support), weights)));
      }
    }
    told.sort(Comparator.comparingDouble((Told t) -> -t.bits()).thenComparing(Told::check));
    return told;
  }

  /**
   * @param chances by outcome, then by set of causes
   * @param weights of the sets; they add up to 1
   */
  static double bits(double[][] chances, double[] weights) {
    double bits = 0;
    for (double[] row : chances) {
      double all = 0;
      for (int h = 0; h < weights.length; h++) {
        all += weights[h] * row[h];
      }
      for (int h = 0; h < weights.length; h++) {
        double both = weights[h] * row[h];
        bits += both > 0 ? both * Math.log(row[h] / all) : 0;
      }
    }
    return bits / Math.log(2);
  }
}
