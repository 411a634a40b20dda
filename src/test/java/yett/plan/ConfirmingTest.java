package yett.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Measure, then repair. The shares of doubt are worked out by hand: of two faults with chances p
 * and 1 - p a look that says "first" with chances a and b takes away 1 - E[p'(1 - p')] / (p (1 -
 * p)).
 */
class ConfirmingTest {
  private static boolean confirms(Scene scene, double first) {
    return new Confirming(scene, new double[] {first, 1 - first}, 0).before(0).isPresent();
  }

  // A look that is right nine times in ten takes 0.64 of the doubt of one half: p' is 0.9 or 0.1.
  @ParameterizedTest
  @CsvSource({"0.5, true", "0.3, true", "0.79, true", "0.8, false", "0.95, false"})
  void a_repair_on_suspicion_is_confirmed_first_until_it_is_sure(double chance, boolean looked) {
    Scene scene = Shop.faults(2).repairs(60, 60).question(5, 0.9, 0.1).scene();
    assertThat(confirms(scene, chance)).isEqualTo(looked);
  }

  // Right in 74 or 76 of 100: takes (0.48)^2 = 0.23 or (0.52)^2 = 0.27 of the doubt.
  @ParameterizedTest
  @CsvSource({"0.74, false", "0.76, true"})
  void a_look_that_hardly_tells_is_not_made_for_it(double right, boolean looked) {
    Scene scene = Shop.faults(2).repairs(60, 60).question(5, right, 1 - right).scene();
    assertThat(confirms(scene, 0.5)).isEqualTo(looked);
  }

  @ParameterizedTest
  @CsvSource({"9, true", "11, false"})
  void cleaning_that_costs_less_than_looking_is_done_at_once(double cost, boolean looked) {
    Scene scene = Shop.faults(2).repairs(10, 60).question(cost, 0.9, 0.1).scene();
    assertThat(confirms(scene, 0.5)).isEqualTo(looked);
  }

  @Test
  void of_two_looks_the_one_that_tells_most_for_its_cost_is_made() {
    Scene scene =
        Shop.faults(2).repairs(60, 60).question(20, 0.95, 0.05).question(4, 0.85, 0.15).scene();
    assertThat(new Confirming(scene, new double[] {0.5, 0.5}, 0).before(0)).contains(1);
  }

  @Test
  void what_the_repair_mends_as_well_needs_no_telling_apart() {
    Scene scene = Shop.sets(2).repairs(60, 60).question(5, 0.9, 0.1, 0.9).scene();
    // The first fault is there in the first and the third set: 0.9 together.
    assertThat(new Confirming(scene, new double[] {0.5, 0.1, 0.4}, 0).before(0)).isEmpty();
  }

  /** New batteries put flat ones right too; charging them does it for less. */
  @Test
  void what_something_cheaper_mends_as_surely_does_not_make_a_repair_sure() {
    Scene scene =
        Shop.faults(2).repair(60, 0, 1, 1).repair(20, 0, 0, 1).question(5, 0.9, 0.1).scene();
    assertThat(confirms(scene, 0.5)).isTrue();
    assertThat(confirms(scene, 0.9)).isFalse();
  }

  @Test
  void what_only_something_dearer_mends_is_mended_as_well() {
    Scene scene =
        Shop.faults(2).repair(60, 0, 1, 1).repair(90, 0, 0, 1).question(5, 0.9, 0.1).scene();
    assertThat(confirms(scene, 0.5)).isFalse();
  }
}
