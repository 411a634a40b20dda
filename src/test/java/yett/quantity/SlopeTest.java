package yett.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SlopeTest {
  // Tables of grades: 1 deg is 1.746 %, 45 deg 100 %; 1/4 in per foot, the fall of a drain, 2.083
  // %.
  @ParameterizedTest
  @CsvSource({
    "1 deg, 1.7455",
    "45°, 100",
    "-2 degrees, -3.4921",
    "1/4 in/ft, 2.0833",
    "1/4\" per foot, 2.0833",
    "-5 mm/m, -0.5",
    "2 cm/m, 2",
  })
  void a_slope_in_other_words(String typed, double percent) {
    assertThat(Slope.parse(typed).orElseThrow().value()).isCloseTo(percent, within(1e-4));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 %", "3", "", "in/ft", "3 mm", "3 V"})
  void anything_else_is_left_to_who_reads_ratios(String typed) {
    assertThat(Slope.parse(typed)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"90 deg", "x deg", "x in/ft"})
  void what_is_no_number_or_upright_is_refused(String typed) {
    assertThatThrownBy(() -> Slope.parse(typed)).isInstanceOf(ReadingException.class);
  }
}
