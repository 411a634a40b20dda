package yett.console;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CleanedTest {

  @ParameterizedTest
  @CsvSource(
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        " 24.3\u00a0V ,24.3 V",
        "5.8\u202fA,5.8 A",
        "\ufeffyes,yes",
        "chain\u00ad sag,chain sag",
        "not\tnow,not now",
        "\u202e3.42\u202c V,3.42 V",
        "Zoe\u0308,Zo\u00eb",
        "0.4 \u2126,0.4 \u03a9",
        "7\u00bd in,7\u00bd in",
        "!1 \\ \"x,!1 \\ \"x"
      })
  void harmless_differences_disappear(String raw, String text) {
    assertThat(Cleaned.of(raw).text()).isEqualTo(text);
  }

  @Test
  void the_line_ends_of_a_paste_become_spaces() {
    assertThat(Cleaned.of("first\r\nsecond\n").text()).isEqualTo("first second");
  }

  @ParameterizedTest
  @ValueSource(strings = {"24\b3 V", "\u001b[A", "a\u0000b", "24\u009b3", "a\u007fb", "a\u001cb"})
  void control_characters_are_refused_not_dropped(String raw) {
    assertThat(Cleaned.of(raw).refusal())
        .hasValueSatisfying(it -> assertThat(it).contains("control"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"20 \ufffdC", "a\ud800b"})
  void what_could_not_be_read_is_refused(String raw) {
    assertThat(Cleaned.of(raw).refusal())
        .hasValueSatisfying(it -> assertThat(it).contains("UTF-8 is expected"));
  }

  @Test
  void a_line_may_have_2000_characters_and_no_more() {
    assertThat(Cleaned.of("x".repeat(2_000) + " ").refusal()).isEmpty();
    assertThat(Cleaned.of("x".repeat(2_001)).refusal())
        .contains("That line is longer than 2,000 characters. Please shorten it.");
  }
}
