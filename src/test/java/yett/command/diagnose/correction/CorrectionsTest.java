package yett.command.diagnose.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.interview.event.Event;

/** An earlier answer is found by what it is about, the latest first. */
class CorrectionsTest extends TechniciansCase {
  private String corrected(String... lines) {
    typed.begin("0", "", "4", "2");
    typed.type(lines);
    return typed.screen();
  }

  @Test
  void the_latest_answer_comes_first_and_the_dangers_last() {
    String screen = corrected("", "correct", "", "save");
    String list = screen.substring(screen.indexOf("Which answer?"));
    assertThat(list)
        .containsSubsequence(
            "Which answer? 1 Does the operator beep",
            "The gate as installed",
            "What is wrong with the gate?",
            "What happened lately?",
            "hurt");
  }

  @Test
  void a_word_of_what_was_measured_finds_it() {
    assertThat(corrected("tell chain sag 75 mm", "yes", "correct sag", "80 mm", "save"))
        .contains("Chain sag: 75 mm.");
    assertThat(typed.stored()).hasAtLeastOneElementOfType(Event.Corrected.class);
  }

  @Test
  void what_is_chosen_now_is_marked() {
    assertThat(corrected("correct history", "back", "save").split("\\(chosen now\\)", -1))
        .hasSize(2);
    assertThat(typed.stored()).filteredOn(Event.Happened.class::isInstance).hasSize(1);
  }

  @Test
  void back_leaves_the_list_and_the_question_as_they_were() {
    corrected("", "correct", "back", "correct", "1", "back", "save");
    assertThat(typed.stored())
        .noneMatch(Event.Retracted.class::isInstance)
        .noneMatch(Event.Corrected.class::isInstance)
        .isNotEqualTo(List.of());
  }
}
