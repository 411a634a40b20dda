package yett.command.diagnose.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LongPromptTest {
  private static final String FOUND =
      "Which outcome? A long sentence that says what was understood from the words. ";

  @Test
  void what_asks_stays_in_the_line_of_what_is_typed() {
    LongPrompt prompt = LongPrompt.of(FOUND + "Right? yes, or Enter for no", 66);
    assertThat(prompt.asked()).isEqualTo("Right? yes, or Enter for no");
    assertThat(prompt.said()).isEqualTo(FOUND.strip());
  }

  @Test
  void without_a_sentence_it_is_divided_at_a_comma() {
    String many = "Number to make it the next check of those that are open now";
    LongPrompt prompt = LongPrompt.of(many + ", Enter for more, 0 to go back", 40);
    assertThat(prompt).isEqualTo(new LongPrompt(many + ",", "Enter for more, 0 to go back"));
  }

  @Test
  void what_cannot_be_divided_stands_above() {
    assertThat(LongPrompt.of("word ".repeat(20).strip(), 40).asked()).isEmpty();
  }
}
