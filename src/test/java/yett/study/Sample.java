package yett.study;

import java.util.Arrays;

/** Numbers of one kind, one for each case. */
record Sample(double[] values) {

  double mean() {
    return Arrays.stream(values).average().orElse(0);
  }

  /** The value that nine in ten do not exceed (nearest rank). */
  double ninetieth() {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? 0 : sorted[(int) Math.ceil(0.9 * sorted.length) - 1];
  }

  /** Half the width of the 95 % interval of the mean, by the normal distribution. */
  double margin() {
    double mean = mean();
    double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    int n = values.length;
    return n < 2 ? 0 : 1.959963984540054 * Math.sqrt(squares / (n - 1) / n);
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
