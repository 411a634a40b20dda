package yett.belief;

import java.util.Arrays;
import java.util.Map;

/**
 * Works out what a repair leaves of each hypothesis. Hypotheses with the same set at the call-out
 * stay next to each other, so equal results are found by looking back a few positions.
 */
final class Remainders {
  private final Lattice lattice;
  private final int[] causes;
  private final double[] chances;
  private int[] initial;
  private int[] tried;
  private int[] current;
  private double[] weights;
  private int size;
  private int group;

  /**
   * @param removes cause to the chance that the repair removed it
   */
  Remainders(CausalModel model, Lattice lattice, Map<String, Double> removes, int expected) {
    this.lattice = lattice;
    this.causes = removes.keySet().stream().mapToInt(model::indexOf).toArray();
    this.chances = removes.values().stream().mapToDouble(Double::doubleValue).toArray();
    this.initial = new int[expected];
    this.tried = new int[expected];
    this.current = new int[expected];
    this.weights = new double[expected];
  }

  void add(int from, int atLastTry, int set, double weight) {
    if (size == 0 || initial[size - 1] != from) {
      group = size;
    }
    spread(from, atLastTry, set, weight, 0);
  }

  private void spread(int from, int atLastTry, int set, double weight, int next) {
    for (int k = next; k < causes.length; k++) {
      if (chances[k] > 0 && lattice.contains(set, causes[k])) {
        spread(from, atLastTry, lattice.without(set, causes[k]), weight * chances[k], k + 1);
        if (chances[k] < 1) {
          spread(from, atLastTry, set, weight * (1 - chances[k]), k + 1);
        }
        return;
      }
    }
    put(from, atLastTry, set, weight);
  }

  private void put(int from, int atLastTry, int set, double weight) {
    for (int i = group; i < size; i++) {
      if (current[i] == set && tried[i] == atLastTry) {
        weights[i] += weight;
        return;
      }
    }
    if (size == weights.length) {
      initial = Arrays.copyOf(initial, 2 * size + 1);
      tried = Arrays.copyOf(tried, 2 * size + 1);
      current = Arrays.copyOf(current, 2 * size + 1);
      weights = Arrays.copyOf(weights, 2 * size + 1);
    }
    initial[size] = from;
    tried[size] = atLastTry;
    current[size] = set;
    weights[size] = weight;
    size++;
  }

  int[] initial() {
    return Arrays.copyOf(initial, size);
  }

  int[] tried() {
    return Arrays.copyOf(tried, size);
  }

  int[] current() {
    return Arrays.copyOf(current, size);
  }

  double[] weights() {
    return Arrays.copyOf(weights, size);
  }
}
