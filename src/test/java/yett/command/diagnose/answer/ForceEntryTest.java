package yett.command.diagnose.answer;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A force that was typed without how long it stayed. */
class ForceEntryTest {
  @ParameterizedTest
  @CsvSource({
    "force 300 middle 380, force 300 middle 380 N 420 ms",
    "force 300 middle 380 N, force 300 middle 380 N 420 ms"
  })
  void the_example_has_the_units_so_that_the_numbers_do_not_run_together(
      String typed, String example) {
    assertThatThrownBy(() -> ForceEntry.read("reversal-closing", typed))
        .hasMessageContaining("such as: " + example + ";");
  }
}
