package yett.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TellingTest {
  @Test
  void a_look_that_decides_between_two_as_probable_causes_tells_one_bit() {
    double[][] decides = {{1, 0}, {0, 1}};
    assertThat(Telling.bits(decides, new double[] {0.5, 0.5})).isCloseTo(1, within(1e-12));
  }

  @Test
  void a_look_that_shows_the_same_whatever_is_wrong_tells_nothing() {
    double[][] same = {{0.7, 0.7}, {0.3, 0.3}};
    assertThat(Telling.bits(same, new double[] {0.2, 0.8})).isCloseTo(0, within(1e-12));
  }

  /** The capacity of a binary symmetric channel that errs once in ten: 1 - H(0.1) = 0.531 bits. */
  @Test
  void a_look_that_errs_once_in_ten_tells_about_half_a_bit() {
    double[][] errs = {{0.9, 0.1}, {0.1, 0.9}};
    assertThat(Telling.bits(errs, new double[] {0.5, 0.5})).isCloseTo(0.531, within(5e-4));
  }
}
