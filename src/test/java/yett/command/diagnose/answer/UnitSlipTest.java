package yett.command.diagnose.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.command.common.HeardAnswer;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.told.Volunteered;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.rules.Reason;
import yett.testing.Shipped;

/** Readings with the wrong unit, and sentences that are no answer. */
class UnitSlipTest extends TechniciansCase {
  private static final Check BATTERY = Shipped.BASE.checks().get("battery-rest-voltage");

  private static Optional<String> instead(Check check, String typed) {
    Answer.Read read =
        HeardAnswer.reading(check.measures().orElseThrow(), typed)
            .answer()
            .flatMap(Answer::reading)
            .orElseThrow();
    return UnitSlip.instead(check, read, Optional.of(usual(check))).map(Answer.Read::typed);
  }

  private static Expectation usual(Check check) {
    return check == BATTERY
        ? new Expectation(check.id(), 25.2, 26.4, "", new Reason("", "", ""))
        : new Expectation(check.id(), 45, 90, "", new Reason("", "", ""));
  }

  @ParameterizedTest
  @CsvSource({"26.1 mV, 26.1 V", "25.9mV, 25.9 V"})
  void a_thousandth_of_what_is_usual_is_asked_about(String typed, String meant) {
    assertThat(instead(BATTERY, typed)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"26.1 V", "11 V", "0.4 V", "900 mV"})
  void what_may_be_a_fault_is_taken_as_it_is(String typed) {
    assertThat(instead(BATTERY, typed)).isEmpty();
  }

  @Test
  void a_bare_reading_of_another_quantity_answers_the_question_wrongly() {
    try (OpenCase open = typed.open()) {
      Volunteered told = new Volunteered(typed.sitting(open), null);
      assertThat(told.isOtherReading(BATTERY, "26.1 A")).isTrue();
      assertThat(told.isOtherReading(BATTERY, "26.1 V")).isFalse();
      assertThat(told.isOtherReading(BATTERY, "charging current 0.4 A")).isFalse();
    }
  }

  @Test
  void a_sentence_that_matches_nothing_is_kept_as_a_note() {
    typed.type("0", "", "4", "0", "one", "my lunch is in the blue bag");
    assertThat(typed.stored()).contains(new Event.Noted("my lunch is in the blue bag"));
    assertThat(typed.screen()).contains("Your words are kept as a note.");
  }
}
