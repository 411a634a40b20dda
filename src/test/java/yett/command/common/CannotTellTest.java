package yett.command.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.interview.event.Answer;

/** What people say who cannot tell, and what only begins like it. */
class CannotTellTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "unknown",
        "cannot tell",
        "dunno",
        "Dunno, sorry",
        "I don\u2019t know",
        "dont know",
        "we don't know that",
        "they can't tell from here",
        "No idea.",
        "I have no idea",
        "haven't a clue",
        "not sure",
        "I'm not really sure",
        "I am not there",
        "I'm not at the gate right now",
        "we are not on site",
        "I'm at work",
        "hard to say",
        "couldn't say",
        "I can't see it from here",
        "well, I did not look",
        "I can't remember",
        "I haven't looked",
        "nobody knows",
        "he is not there",
        "I cannot get near it",
        "i dont know love",
        "no idea, ask Barry",
        "no idea, I have never been here before",
        "not know",
        "not sure, you'll have to ask the boss"
      })
  void is_understood(String line) {
    assertThat(Words.wish(line)).contains(Words.Wish.UNKNOWN);
  }

  @ParameterizedTest
  @ValueSource(strings = {"does not apply", "Does not apply.", "doesn't apply", "n/a", "N/A"})
  void a_question_may_have_no_sense(String line) {
    assertThat(Words.wish(line)).contains(Words.Wish.SENSELESS);
    assertThat(CannotTellWords.answer(line)).contains(new Answer.DoesNotApply());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "I don't know why it stopped half way",
        "no",
        "not",
        "it does not open",
        "nobody",
        "I can't see a light",
        "it is not there",
        "the chain is not there",
        "no idea, it just beeps",
        "no idea, try the motor again",
        "I cannot get out",
        "we are away and it stands open",
        "I can't hear the motor"
      })
  void tells_something(String line) {
    assertThat(Words.wish(line)).isEqualTo(Optional.empty());
  }
}
