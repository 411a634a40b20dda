package yett.command.diagnose.look;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What else a line says beside a remark on a look. */
class RemarkLineTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "remark 6 gravel washed out, 1b | gravel washed out | 1b",
        "Remark 6 gravel washed out; ?3, 4 rusty | gravel washed out | ?3, 4 rusty",
        "1b, remark 6 gravel washed out | gravel washed out | 1b",
        "1b, remark 6 gravel, at the corner, 3 | gravel, at the corner | 1b, 3",
        "remark 6 gravel, remark 2 loose | gravel | remark 2 loose",
      })
  void what_is_said_of_another_look_is_no_part_of_the_remark(
      String line, String words, String rest) {
    assertThat(RemarkLine.first(line)).isEqualTo(new RemarkLine(6, words, rest));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "rust at the far bracket",
        "washed out, two metres",
        "gap 2,5 mm",
        "leans, 12 mm at the top",
        "two of them, 20mm, on 2 posts"
      })
  void words_and_lengths_name_no_look(String words) {
    assertThat(RemarkLine.first("remark 6 " + words)).isEqualTo(new RemarkLine(6, words, ""));
  }

  @Test
  void the_word_alone_is_no_remark() {
    assertThat(RemarkLine.is("3 with a remark")).isFalse();
    assertThat(RemarkLine.is("remark")).isFalse();
  }
}
