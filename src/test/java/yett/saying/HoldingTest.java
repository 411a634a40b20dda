package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HoldingTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "I'm holding it open so the cars get out",
        "my husband is holding the gate",
        "he's holding it back with both hands",
        "we hold the gate shut",
        "two lads are holding the gate up",
        "my sister is holding the gate",
        "my mum keeps it shut with her back",
        "still holding it",
        "she keeps it open with her foot",
        "somebody is standing against the gate",
        "I've got hold of the gate"
      })
  void who_holds_the_gate_is_heard(String line) {
    assertThat(Holding.in(line)).isTrue();
  }

  /** Holding a button, the line or somebody's attention holds no gate. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "hold on a second",
        "I hold the button and it closes",
        "I'm holding the remote right in front of it",
        "I hold it down and nothing happens",
        "nobody is holding it",
        "should I hold it open",
        "we keep it open all day",
        "he is holding the gate off him",
        "I'm not holding the gate",
        "the latch holds it shut",
        "I was holding my phone"
      })
  void other_holding_is_not(String line) {
    assertThat(Holding.in(line)).isFalse();
  }
}
