package yett.command.gates;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** What is told of a gate on a command line. */
class GateAnswersTest {
  @Test
  void a_word_that_is_no_question_is_answered_with_all_of_them_and_what_they_are() {
    assertThatThrownBy(() -> GateAnswers.of(List.of("weight=450"), Shipped.BASE))
        .hasMessageContaining("\"weight=450\" is not a question about a gate")
        .hasMessageContaining("(Mass of the leaf)")
        .hasMessageContaining("opening (Opening, post to post)");
  }
}
