package yett.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.replay.SmallRuleBase;

class NoteWordsTest {
  private static final NoteWords NOTES = new NoteWords(SmallRuleBase.base());

  private static String told(Event event) {
    return event.accept(NOTES);
  }

  @Test
  void an_answer_is_told_with_its_question_in_the_words_of_the_card() {
    var check =
        SmallRuleBase.base().checks().values().stream()
            .filter(c -> !c.measured())
            .findFirst()
            .orElseThrow();
    var outcome = check.outcomes().get(0);
    assertThat(told(new Event.Answered(check.id(), new Answer.Chosen(outcome.id()))))
        .isEqualTo(check.ask() + " " + outcome.text());
  }

  @Test
  void what_the_rule_base_has_lost_is_told_by_its_id() {
    assertThat(told(new Event.Answered("gone-check", new Answer.Chosen("quite-gone"))))
        .isEqualTo("gone check quite gone");
    assertThat(told(new Event.Repaired("gone-repair", false)))
        .isEqualTo("gone repair: could not be done");
  }

  @Test
  void a_change_of_an_answer_says_what_it_became() {
    assertThat(told(new Event.Corrected(7, new Answer.Chosen("part-way"))))
        .isEqualTo("an answer changed to part way");
  }

  @Test
  void a_try_says_what_is_left() {
    assertThat(
            told(new Event.Retested(false, Optional.empty(), List.of("gone-complaint"), List.of())))
        .startsWith("the gate ")
        .contains("gone complaint");
  }
}
