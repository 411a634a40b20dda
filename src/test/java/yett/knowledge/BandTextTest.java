package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BandTextTest {
  /** Where figures and blanks were looked at from each of them, this took an hour. */
  @ParameterizedTest
  @ValueSource(strings = {"1", " ", "1 ", "1,000", "to "})
  void a_band_without_end_is_none(String piece) {
    String text = "below 1" + piece.repeat(200_000) + "x";

    assertThatThrownBy(() -> BandText.parse(text, null))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("too long for a band");
  }
}
