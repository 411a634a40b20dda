package yett.command.diagnose.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.command.diagnose.TechniciansCase;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.rules.Reason;
import yett.testing.Shipped;

/** Readings that are in order and cannot be right. */
class TooGoodTest extends TechniciansCase {
  private static final Check CHAIN = Shipped.BASE.checks().get("chain-length");
  private static final Check SAG = Shipped.BASE.checks().get("chain-sag");

  private static Expectation usual(Check check, double low, double high) {
    return new Expectation(check.id(), low, high, "", new Reason("", "", ""));
  }

  @ParameterizedTest
  @CsvSource({"232, true", "365, true", "380, false", "384, false", "391, false", "450, false"})
  void a_chain_shorter_than_a_new_one_is_asked_about(double millimetres, boolean asked) {
    assertThat(TooGood.is(CHAIN, millimetres, usual(CHAIN, 381, 387))).isEqualTo(asked);
  }

  @ParameterizedTest
  @CsvSource({"1", "400"})
  void what_is_a_fault_on_either_side_is_not_asked_about(double millimetres) {
    assertThat(TooGood.is(SAG, millimetres, usual(SAG, 45, 90))).isFalse();
  }

  @Test
  void only_a_yes_keeps_it() {
    Optional<Expectation> usual = Optional.of(usual(CHAIN, 381, 387));
    Answer reading = new Answer.Read("232.2 mm", 232.2);
    try (OpenCase open = typed.open()) {
      assertThat(new TooGood(typed.sitting(open, "no")).isMeant(CHAIN, reading, usual)).isFalse();
      assertThat(new TooGood(typed.sitting(open, "yes")).isMeant(CHAIN, reading, usual)).isTrue();
    }
    assertThat(typed.screen().replaceAll("\\s+", " "))
        .contains("232.2 mm is far from the usual 381 mm to 387 mm");
  }
}
