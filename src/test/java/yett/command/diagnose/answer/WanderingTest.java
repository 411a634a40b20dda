package yett.command.diagnose.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.testing.Shipped;

/** A reading that does not stand still. */
class WanderingTest extends TechniciansCase {
  private static final Check LOOP = Shipped.BASE.checks().get("loop-resistance");
  private static final Measures OHMS = LOOP.measures().orElseThrow();

  @ParameterizedTest
  @CsvSource({
    "2.6 to 9 ohm, 2.6, 9",
    "2.6-9, 2.6, 9",
    "between 2.6 and 9 ohm, 2.6, 9",
    "it jumps from 9 ohm to 2.6 ohm, 9, 2.6",
    "2.6 – 9 ohm, 2.6, 9",
    "0.9 ohm to 0.011 kohm, 0.9, 11",
  })
  void a_range_is_read_as_its_two_ends(String line, double one, double other) {
    WanderingReading said = WanderingReading.of(OHMS, line).orElseThrow();
    assertThat(said.one().value()).isEqualTo(one);
    assertThat(said.other().value()).isEqualTo(other);
    assertThat(said.middle().value()).isBetween(Math.min(one, other), Math.max(one, other));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2.6",
        "9 ohm",
        "2.6 and 9 ohm",
        "2 to",
        "to 9 ohm",
        "about 9 ohm",
        "7 to 7 ohm",
        "-9"
      })
  void anything_else_is_none(String line) {
    assertThat(WanderingReading.of(OHMS, line)).isEmpty();
  }

  /** The answer to the check for a line typed at its prompt, and lines after it. */
  private Optional<Answer> answer(Check check, String... lines) {
    try (OpenCase open = typed.open()) {
      Sitting sitting =
          typed.sitting(open, List.of(lines).subList(1, lines.length).toArray(new String[0]));
      return new Questions(sitting, new PromptRequests(sitting)).answer(check, lines[0]);
    }
  }

  @Test
  void ends_that_mean_the_same_count_by_their_middle() {
    Optional<Answer> answer = answer(LOOP, "1 to 2 ohm");
    assertThat(answer.flatMap(Answer::reading).map(Answer.Read::value)).contains(1.5);
    assertThat(typed.stored())
        .contains(
            new Event.Noted(
                "The reading wanders, 1 to 2 ohm; judged by 1.5 ohm", Optional.of(LOOP.id())));
  }

  @Test
  void ends_that_mean_different_things_are_asked_about() {
    Optional<Answer> answer = answer(LOOP, "2.6 to 900 ohm", "2");
    assertThat(typed.screen()).contains("It wanders: which end is it to be judged by?");
    assertThat(answer.flatMap(Answer::reading).map(Answer.Read::value)).contains(900.0);
    assertThat(typed.stored())
        .contains(
            new Event.Noted(
                "The reading wanders, 2.6 to 900 ohm; judged by 900 ohm", Optional.of(LOOP.id())));
  }

  @Test
  void whoever_wants_neither_end_is_asked_again() {
    assertThat(answer(LOOP, "2.6 to 900 ohm", "")).isEmpty();
    assertThat(typed.stored()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "the resistance of the loop is 1 to 2 ohm",
        "the resistance of the loop is between 1 and 2 ohm"
      })
  void a_range_can_be_told_with_other_words(String line) {
    SpokenReading told = SpokenReading.best(SpokenReading.all(line, Shipped.BASE)).orElseThrow();
    assertThat(told.checks()).contains(LOOP);
    assertThat(told.shown(LOOP)).isEqualTo("Loop resistance: " + told.typed() + ".");
    try (OpenCase open = typed.open()) {
      assertThat(told.answer(LOOP, typed.sitting(open)).flatMap(Answer::reading))
          .hasValueSatisfying(read -> assertThat(read.value()).isEqualTo(1.5));
    }
  }

  @Test
  void two_numbers_among_words_are_no_range_without_a_unit() {
    assertThat(SpokenReading.best(SpokenReading.all("it is gate 3-4", Shipped.BASE))).isEmpty();
  }
}
