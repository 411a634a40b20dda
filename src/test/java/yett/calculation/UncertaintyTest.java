package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UncertaintyTest {
  // Limits: 120 V at 0.7 % + 2 counts of 0.1 V spans 118.96 to 121.04 V (trade journal), 120 V AC
  // at
  // 1 % + 3 counts is 1.5 V (meter data sheet); the others worked by hand. reading, %, counts,
  // count, limit, standard uncertainty.
  @ParameterizedTest
  @CsvSource({
    "120, 0.7, 2, 0.1, 1.04, 0.6004",
    "120, 1, 3, 0.1, 1.5, 0.8660",
    "24.31, 0.5, 2, 0.01, 0.1416, 0.08172",
    "12.62, 0.5, 2, 0.01, 0.08310, 0.04798",
    "4.6, 2, 5, 0.1, 0.5920, 0.3418",
    "118.4, 1, 3, 0.1, 1.484, 0.8568",
    "0.4, 0.9, 2, 0.1, 0.2036, 0.1175",
    "-12.62, 0.5, 2, 0.01, 0.08310, 0.04798",
  })
  void a_data_sheet_gives_a_standard_uncertainty(
      double reading, double percent, double counts, double count, double limit, double standard) {
    assertThat(InstrumentUncertainty.limit(reading, percent, counts, count))
        .isCloseTo(limit, within(limit * 5e-4));
    assertThat(InstrumentUncertainty.standard(reading, percent, counts, count))
        .isCloseTo(standard, within(standard * 5e-4));
  }

  @Test
  void a_rectangular_limit_divides_by_the_root_of_three() {
    // Distribution table of a Eurachem-type text, after JCGM 100: ±1.5 gives 0.87.
    assertThat(InstrumentUncertainty.standard(0, 0, 1, 1.5)).isCloseTo(0.87, within(0.005));
  }

  @Test
  void independent_parts_combine_by_the_root_of_their_squares() {
    // Worked by hand after JCGM 100: 24.31 V (0.5 % + 2 x 0.01 V) repeating within 0.0200 V gives
    // 0.08414 V; 0.02500 (certificate), 0.08660 and 0.002887 (one digit) give 0.09018.
    double meter = InstrumentUncertainty.standard(24.31, 0.5, 2, 0.01);
    assertThat(InstrumentUncertainty.combined(meter, 0.0200)).isCloseTo(0.08414, within(5e-6));
    assertThat(InstrumentUncertainty.combined(0.02500, 0.08660, 0.002887))
        .isCloseTo(0.09018, within(5e-6));
    assertThat(InstrumentUncertainty.combined()).isZero();
  }

  // Standard normal distribution, printed in any statistics table: Φ(1) = 0.8413, Φ(2) = 0.9772,
  // Φ(1.96) = 0.9750, Φ(0.5) = 0.6915. reading, u, weights below, between and above 10 and 12.
  @ParameterizedTest
  @CsvSource({
    "11, 1, 0.1587, 0.6827, 0.1587",
    "10, 1, 0.5000, 0.4772, 0.0228",
    "12, 2, 0.1587, 0.3413, 0.5000",
    "8.04, 1, 0.9750, 0.0250, 0.0000",
    "11, 2, 0.3085, 0.3829, 0.3085",
  })
  void a_reading_near_a_limit_speaks_for_both_sides(
      double reading, double u, double below, double between, double above) {
    assertThat(BandWeights.of(reading, u, 10, 12))
        .containsExactly(new double[] {below, between, above}, within(6e-5));
  }

  // By definition: without uncertainty one band takes all, a limit belonging to the band above.
  @ParameterizedTest
  @CsvSource({"9.99, 1, 0, 0", "10, 0, 1, 0", "11.99, 0, 1, 0", "12, 0, 0, 1", "1e300, 0, 0, 1"})
  void a_certain_reading_gives_a_hard_answer(
      double reading, double below, double between, double above) {
    assertThat(BandWeights.of(reading, 0, 10, 12)).containsExactly(below, between, above);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void weights_are_a_distribution_over_the_bands(long seed) {
    Random random = new Random(seed);
    for (int round = 0; round < 500; round++) {
      double[] limits =
          random.doubles(1 + random.nextInt(5), -50, 50).sorted().distinct().toArray();
      double u = random.nextInt(10) == 0 ? 0 : Math.pow(10, random.nextDouble() * 16 - 8);
      double[] weights = BandWeights.of(random.nextDouble() * 120 - 60, u, limits);

      assertThat(weights).as("seed %d", seed).hasSize(limits.length + 1);
      assertThat(Arrays.stream(weights).sum()).as("seed %d", seed).isCloseTo(1, within(1e-14));
      assertThat(Arrays.stream(weights)).as("seed %d", seed).allMatch(w -> w >= 0 && w <= 1);
    }
  }

  @Test
  void an_uncertainty_small_beyond_measure_gives_nearly_the_hard_answer() {
    assertThat(BandWeights.of(10, Double.MIN_VALUE, 10, 12)).containsExactly(0.5, 0.5, 0);
    assertThat(BandWeights.of(11, Double.MIN_VALUE, 10, 12)).containsExactly(0, 1, 0);
  }

  @Test
  void one_band_without_limits_takes_everything() {
    assertThat(BandWeights.of(5, 1)).containsExactly(1);
  }

  @Test
  void limits_that_do_not_rise_are_refused() {
    assertThatThrownBy(() -> BandWeights.of(5, 1, 10, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("limits must rise, but 10.0 follows 10.0");
    assertThatThrownBy(() -> BandWeights.of(5, -1, 10))
        .hasMessage("standard uncertainty must not be negative, not -1.0");
  }
}
