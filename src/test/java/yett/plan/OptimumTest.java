package yett.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import yett.testing.Size;

/** How much dearer following the search is than the lowest expected cost there is. */
class OptimumTest {
  @Test
  void one_fault_up_to_six_repairs_four_checks_three_set_ups() {
    excess("one fault", Size.of(60, 500), Shop::randomFault);
  }

  @Test
  void several_faults_at_once() {
    excess("several faults", Size.of(40, 200), Shop::randomSets);
  }

  private static void excess(String what, int models, Function<SplittableRandom, Scene> make) {
    double[] excess = new double[models];
    int worst = 0;
    for (int seed = 0; seed < models; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Scene scene = make.apply(random);
      double[] weights = Shop.weights(scene, random);
      Optimum optimum = new Optimum(scene);
      excess[seed] = optimum.followed(weights, 0) / optimum.best(weights, 0) - 1;
      assertThat(excess[seed]).as("seed " + seed).isGreaterThan(-1e-6);
      worst = excess[seed] > excess[worst] ? seed : worst;
    }
    double[] sorted = Arrays.stream(excess).sorted().toArray();
    double mean = Arrays.stream(excess).average().orElseThrow();
    double p99 = sorted[(int) Math.ceil(0.99 * models) - 1];
    System.out.printf(
        "%s, %d models: excess over the optimum %.3f %% on average, 99 of 100 at most %.2f %%,"
            + " worst %.2f %% (seed %d)%n",
        what, models, 100 * mean, 100 * p99, 100 * excess[worst], worst);
    assertThat(mean).isLessThanOrEqualTo(0.001);
    assertThat(p99).isLessThanOrEqualTo(0.01);
    assertThat(excess[worst]).isLessThanOrEqualTo(0.03);
  }
}
