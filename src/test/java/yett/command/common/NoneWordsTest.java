package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoneWordsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "none",
        "No.",
        "nothing that I know",
        "not as far as I know",
        "none of these"
      })
  void a_line_that_says_none(String line) {
    assertThat(NoneWords.isSaid(line)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "nothing moves",
        "no power",
        "not any more",
        "none of the lamps is lit",
        "not",
        "know",
        ""
      })
  void a_line_that_begins_so_says_something_else(String line) {
    assertThat(NoneWords.isSaid(line)).isFalse();
  }
}
