package yett.interview.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {
  @ParameterizedTest
  @CsvSource({
    "1, almost certain (over 99 %)",
    "0.95, almost certain (95 %)",
    "0.9499, almost certain (95 %)",
    "0.944, very likely (94 %)",
    "0.8, very likely (80 %)",
    "0.5, likely (50 %)",
    "0.2, possible (20 %)",
    "0.05, unlikely (5 %)",
    "0.044, very unlikely (4 %)",
    "0, very unlikely (under 1 %)"
  })
  void a_chance_is_said_in_words_and_percent(double chance, String said) {
    assertThat(Chance.of(chance)).hasToString(said);
  }

  @Test
  void what_is_no_probability_is_refused() {
    assertThatThrownBy(() -> Chance.of(1.2)).hasMessage("no probability: 1.2");
    assertThatThrownBy(() -> Chance.of(Double.NaN)).hasMessage("no probability: NaN");
  }

  // 10 decibans are a factor of 10 on the odds, 3 about a factor of 2: I. J. Good, Probability and
  // the Weighing of Evidence, 1950 (from memory).
  @ParameterizedTest
  @CsvSource({
    "0.5, 0.909090910, speaks strongly for, +10.0 decibans",
    "0.5, 0.666666667, speaks clearly for, +3.0 decibans",
    "0.6, 0.5, speaks slightly against, -1.8 decibans",
    "0.5, 0.5, says hardly anything on, +0.0 decibans",
    "0.5, 0, rules out, beyond all measure against"
  })
  void a_weight_is_said_in_words_and_decibans(
      double before, double after, String words, String figure) {
    Weight weight = Weight.between(before, after);
    assertThat(weight.words()).isEqualTo(words);
    assertThat(weight.figure()).isEqualTo(figure);
  }
}
