package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import yett.belief.Belief.Explanation;

/** The most probable sets of causes, each once, with weights that add up to 1. */
public final class Support {
  private final int[] hypotheses;
  private final int[][] sets;
  private final double[] weights;
  private final double mass;

  private Support(Lattice lattice, int[] hypotheses, double[] weights, double mass) {
    this.hypotheses = hypotheses;
    this.sets = Arrays.stream(hypotheses).mapToObj(lattice::members).toArray(int[][]::new);
    this.weights = weights;
    this.mass = mass;
  }

  static Support of(Lattice lattice, int[] sets, double[] weights, double mass, int most) {
    double[] bySet = new double[lattice.size()];
    for (int i = 0; i < sets.length; i++) {
      bySet[sets[i]] += weights[i];
    }
    // Keeps the smallest of the best so far at the top, so that all other sets are passed over
    // quickly.
    PriorityQueue<Integer> best =
        new PriorityQueue<>(
            Comparator.<Integer>comparingDouble(h -> bySet[h]).thenComparingInt(h -> -h));
    double least = 0;
    for (int h = 0; h < bySet.length; h++) {
      if (bySet[h] > least) {
        best.add(h);
        if (best.size() > most) {
          best.remove();
        }
        least = best.size() < most ? 0 : bySet[best.element()];
      }
    }
    List<Integer> chosen = new ArrayList<>(best);
    chosen.sort(Comparator.<Integer>comparingDouble(h -> -bySet[h]).thenComparingInt(h -> h));
    int size = 0;
    for (double sum = 0; size < chosen.size() && sum < mass; size++) {
      sum += bySet[chosen.get(size)];
    }
    int[] hypotheses = chosen.stream().limit(size).mapToInt(Integer::intValue).toArray();
    double[] kept = Arrays.stream(hypotheses).mapToDouble(h -> bySet[h]).toArray();
    double total = Arrays.stream(kept).sum();
    double[] shares = Arrays.stream(kept).map(w -> w / total).toArray();
    return new Support(lattice, hypotheses, shares, total);
  }

  /** The causes of each set. Callers must not change the arrays. */
  int[][] sets() {
    return sets;
  }

  public int size() {
    return hypotheses.length;
  }

  /** The weight of each set; they add up to 1. */
  public double[] weights() {
    return weights.clone();
  }

  /** For each set, the ratio of a part to a whole, both given by position in the lattice. */
  double[] shares(double[] part, double[] whole) {
    return Arrays.stream(hypotheses).mapToDouble(h -> part[h] / whole[h]).toArray();
  }

  /** The causes of set number {@code i}, as ascending positions in the model. */
  public int[] causes(int i) {
    return sets[i].clone();
  }

  /**
   * For each cause, whether it is in any of the sets.
   *
   * @param all number of causes in the model
   */
  public boolean[] present(int all) {
    boolean[] present = new boolean[all];
    for (int[] set : sets) {
      for (int cause : set) {
        present[cause] = true;
      }
    }
    return present;
  }

  /** The sets as reported, with kinds of a cause as that cause; the most probable first. */
  List<Explanation> explanations(CausalModel model) {
    Map<List<String>, Double> told = new LinkedHashMap<>();
    for (int i = 0; i < hypotheses.length; i++) {
      List<String> names =
          Arrays.stream(sets[i])
              .map(model::told)
              .distinct()
              .mapToObj(c -> model.causes().get(c))
              .toList();
      told.merge(names, weights[i] * mass, Double::sum);
    }
    return told.entrySet().stream()
        .map(e -> new Explanation(e.getKey(), e.getValue()))
        .sorted(Comparator.comparingDouble(e -> -e.chance()))
        .toList();
  }
}
