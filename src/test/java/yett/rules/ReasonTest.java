package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReasonTest {
  @Test
  void the_words_of_a_reason_are_those_of_the_rule_without_its_quotes() {
    Reason reason =
        Rules.judge().expectation("chain-hand-lift").map(Conclusion.Expectation::reason).get();
    assertThat(reason.words())
        .isEqualTo(
            "2 % of the span where the drive reverses often, 4 % for an ordinary level run"
                + " (chain handbook (slack of 2 % to 4 % of the span); considered judgement for"
                + " short runs)");
  }

  @Test
  void particulars_of_the_case_stand_before_the_words_of_the_rule() {
    Reason reason = Rules.judge(Rules.read(3, "leaf-plumb", "45 mm")).stops().get(0).reason();
    assertThat(reason.because())
        .startsWith("it leans 45 mm over a metre; a lean of 40 mm over a metre");
  }
}
