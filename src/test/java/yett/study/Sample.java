package yett.study;

import java.util.Arrays;

/** Numbers of one kind, one for each case. */
record Sample(double[] values) {
  /** Of the normal distribution, for 95 % between minus this and this. */
  static final double Z = 1.959963984540054;

  double mean() {
    return Arrays.stream(values).average().orElse(0);
  }

  /** The value that nine in ten do not exceed (nearest rank). */
  double ninetieth() {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? 0 : sorted[(int) Math.ceil(0.9 * sorted.length) - 1];
  }

  /**
   * 95 % interval of that value: two values in their order, by how many of so many stay below it
   * (binomial, by the normal distribution; Conover, Practical Nonparametric Statistics, from
   * memory).
   */
  double[] ninetiethInterval() {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    double reach = Z * Math.sqrt(n * 0.9 * 0.1);
    int low = (int) Math.ceil(0.9 * n - reach);
    int high = (int) Math.ceil(0.9 * n + reach);
    return n == 0
        ? new double[2]
        : new double[] {sorted[Math.max(1, low) - 1], sorted[Math.min(n, high) - 1]};
  }

  /** Half the width of the 95 % interval of the mean, by the normal distribution. */
  double margin() {
    double mean = mean();
    double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    int n = values.length;
    return n < 2 ? 0 : Z * Math.sqrt(squares / (n - 1) / n);
  }

  /** Case by case, these less those. */
  Sample minus(Sample other) {
    double[] less = values.clone();
    for (int i = 0; i < less.length; i++) {
      less[i] -= other.values[i];
    }
    return new Sample(less);
  }
}
