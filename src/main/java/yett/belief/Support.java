package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import yett.belief.Belief.Explanation;

/** The most probable sets of causes, each once, with weights that add up to 1. */
public final class Support {
  private final Lattice lattice;
  private final int[] hypotheses;
  private final double[] weights;
  private final double mass;

  private Support(Lattice lattice, int[] hypotheses, double[] weights, double mass) {
    this.lattice = lattice;
    this.hypotheses = hypotheses;
    this.weights = weights;
    this.mass = mass;
  }

  static Support of(Lattice lattice, int[] sets, double[] weights, double mass, int most) {
    double[] bySet = new double[lattice.size()];
    for (int i = 0; i < sets.length; i++) {
      bySet[sets[i]] += weights[i];
    }
    double[] sorted = Arrays.stream(bySet).filter(w -> w > 0).sorted().toArray();
    double threshold = 0;
    double sum = 0;
    for (int k = 0; k < sorted.length && k < most && sum < mass; k++) {
      threshold = sorted[sorted.length - 1 - k];
      sum += threshold;
    }
    List<Integer> chosen = new ArrayList<>();
    for (int h = 0; h < bySet.length; h++) {
      if (bySet[h] > 0 && bySet[h] >= threshold) {
        chosen.add(h);
      }
    }
    chosen.sort(Comparator.<Integer>comparingDouble(h -> -bySet[h]).thenComparingInt(h -> h));
    int size = Math.min(most, chosen.size());
    int[] hypotheses = chosen.stream().limit(size).mapToInt(Integer::intValue).toArray();
    double[] kept = Arrays.stream(hypotheses).mapToDouble(h -> bySet[h]).toArray();
    double total = Arrays.stream(kept).sum();
    double[] shares = Arrays.stream(kept).map(w -> w / total).toArray();
    return new Support(lattice, hypotheses, shares, total);
  }

  int[][] sets() {
    return Arrays.stream(hypotheses).mapToObj(lattice::members).toArray(int[][]::new);
  }

  public int size() {
    return hypotheses.length;
  }

  /** Share of each set; they add up to 1. */
  public double[] weights() {
    return weights.clone();
  }

  /** Probability that these sets have together among all. */
  public double mass() {
    return mass;
  }

  /** Causes of set number {@code i}, ascending positions in the model. */
  public int[] causes(int i) {
    return lattice.members(hypotheses[i]);
  }

  List<Explanation> explanations(CausalModel model) {
    List<Explanation> list = new ArrayList<>();
    for (int i = 0; i < hypotheses.length; i++) {
      List<String> names = Arrays.stream(causes(i)).mapToObj(c -> model.causes().get(c)).toList();
      list.add(new Explanation(names, weights[i] * mass));
    }
    return list;
  }
}
