package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.testing.Shipped;

/** A gate may be called what it likes: its name tells of no danger, and hides none. */
class KnownNamesTest {
  private static final KnownNames NAMES =
      new KnownNames(List.of("Smokehouse", "Burnt mill", "Fire", "Fish dock"));

  private static Heard hear(String words) {
    return new Tellings(Shipped.HEARING, NAMES).hear(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Smokehouse is burning",
        "there is a fire at the Smokehouse gate",
        "there is smoke at the Smokehouse",
        "black smoke comes out of the box at the Burnt Mill gate",
        "fire at the fish dock"
      })
  void a_danger_beside_the_name_is_heard(String words) {
    assertThat(new Tellings(Shipped.HEARING).hear(words).dangers()).isNotEmpty();
    assertThat(hear(words).dangers()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Smokehouse",
        "the Smokehouse gate will not open",
        "it is the smokehouse, the gate does not close",
        "I ring about the Burnt Mill gate"
      })
  void no_danger_is_heard_in_a_name(String words) {
    assertThat(hear(words).dangers()).isEmpty();
  }

  @Test
  void a_gate_named_by_the_plain_word_is_asked_about() {
    assertThat(hear("there is a fire").dangers()).isNotEmpty();
  }
}
