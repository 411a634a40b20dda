package yett.command.gates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** What is told of a gate on a command line. */
class GateAnswersTest {
  @Test
  void a_word_that_is_no_question_is_answered_with_all_of_them_and_what_they_are() {
    assertThatThrownBy(() -> GateAnswers.of(List.of("weight=450"), Shipped.BASE))
        .hasMessageContaining("\"weight=450\" is not a question about a gate")
        .hasMessageContaining("(Mass of the leaf)")
        .hasMessageContaining("opening (Opening, post to post)")
        .hasMessageNotContaining("Nearest");
    assertThatThrownBy(() -> GateAnswers.of(List.of("opning=4 m"), Shipped.BASE))
        .hasMessageContaining("Maybe \"opening\".");
  }

  @Test
  void what_was_told_is_said_as_it_was_understood_and_the_rest_is_not() {
    Map<String, String> told =
        GateAnswers.of(List.of("batteries=none", "opening=7 m"), Shipped.BASE);
    assertThat(GateAnswers.told(told, Shipped.BASE))
        .isEqualTo(
            "Entered: Opening, post to post: 7 m; Batteries: none. All else is assumed as usual.");
  }
}
