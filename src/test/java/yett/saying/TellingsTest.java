package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.saying.Thing.Kind;
import yett.testing.Shipped;

/** What people tell without being asked is found among all that the cards know. */
class TellingsTest {
  private static final Tellings TELLINGS = new Tellings(Shipped.HEARING);

  @ParameterizedTest
  @CsvSource({
    "display says position, OUTCOME, fault-shown, position",
    "chain is off, COMPLAINT, chain-hangs, ''",
    "the chain is off the sprocket, OUTCOME, chain-looks, parted",
    "the display is dark, OUTCOME, display-lit, dark",
    "ants in the box, OUTCOME, seen-at-the-box, insects",
    "the beam lens is dirty, OUTCOME, beam-path, dirty",
    "bolts are loose, OUTCOME, pad-and-bolts, moves",
    "runs slower than before, COMPLAINT, slow, ''",
    "a lorry struck the post yesterday, HISTORY, vehicle-struck, ''",
    "there was a thunderstorm last night, HISTORY, thunderstorm, ''",
    "chain is loose, EFFECT, chain-loose, ''",
    "the receiver lamp, CHECK, receiver-lamp, ''",
    "the pillar leans, READING, post-plumb, ''",
  })
  void words_are_found_whatever_they_are_about(
      String words, Kind kind, String card, String outcome) {
    assertThat(TELLINGS.hear(words).things()).contains(new Thing(kind, card, outcome));
  }

  @ParameterizedTest
  @CsvSource({
    "smoke is coming out of the operator, danger-burning, burning",
    "somebody is caught, danger-person, hurt-or-trapped",
    "the wires are bare, danger-conductors, bare-wires",
    "the gate leans over, danger-leaf, off-or-leaning",
    "battery is swollen, danger-battery, leaking",
    "a funny smell and sparks from the cabinet by the post, danger-burning, burning",
    "the chain is off and he is trapped, danger-person, hurt-or-trapped",
  })
  void danger_is_heard_beside_all_else(String words, String check, String outcome) {
    assertThat(TELLINGS.hear(words).dangerThings()).extracting(Thing::card).contains(check);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "hello there", "the weather is nice", "good morning", "!!! ???", "日本"})
  void words_that_tell_nothing_here_find_nothing(String words) {
    assertThat(TELLINGS.hear(words).things()).isEmpty();
    assertThat(TELLINGS.hear(words).dangerThings()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "battery is low",
        "the chain is loose",
        "motor is noisy",
        "it stops half way",
        "the remote does not work",
        "display says position"
      })
  void what_is_only_wrong_is_no_danger(String words) {
    assertThat(TELLINGS.hear(words).dangerThings()).isEmpty();
  }

  @Test
  void the_words_beside_a_reading_say_what_was_measured() {
    Set<String> volts = Set.of("battery-rest-voltage", "dc-supply-voltage", "beam-supply");
    assertThat(TELLINGS.hearReading("battery at rest", volts))
        .containsExactly("battery-rest-voltage");
    assertThat(TELLINGS.hearReading("supply of the beam", volts)).startsWith("beam-supply");
    assertThat(TELLINGS.hearReading("the weather", volts)).isEmpty();
  }

  @Test
  void proofs_are_not_told() {
    assertThat(TELLINGS.hear("the leaf stops at both limits in the same place").things())
        .noneMatch(t -> t.card().equals("limits-hold"));
  }
}
