package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.testing.Shipped;

/** Several things in one breath, what is denied, and words that some prompt knows. */
class ListeningTest {
  private static Heard hear(String words) {
    return Listening.to(words, Shipped.HEARING);
  }

  private static List<String> cards(List<Thing> things) {
    return things.stream().map(Thing::card).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "it does not open, stays-shut",
    "'the keypad works, the remotes do not', one-command-fails",
    "'It works again, she put the breaker on', as-usual-again",
    "'the remotes don''t work but the keypad does', one-command-fails"
  })
  void the_first_finding_is_what_was_meant(String words, String card) {
    assertThat(cards(hear(words).things())).first().isEqualTo(card);
  }

  @Test
  void one_sentence_may_tell_of_several_things() {
    Heard heard = hear("my mother is shut in, there is a fire in the shed and the chain is off");
    assertThat(cards(heard.dangerThings())).contains("danger-shut-in", "danger-fire");
    assertThat(cards(heard.things())).contains("chain-hangs");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "there is no fire",
        "nobody is hurt",
        "it doesn't smell burnt",
        "I can't see any sparks",
        "no smoke, it just stopped",
        "it did not hit anyone"
      })
  void what_is_denied_is_no_danger(String words) {
    assertThat(hear(words).dangers()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "smoke!!, danger-burning",
    "help, danger-person",
    "he can not get out and he is bleeding, danger-person",
    "it won't stop for people, danger-movement",
    "'the gate opens by itself at night', danger-movement"
  })
  void a_word_of_danger_is_enough(String words, String check) {
    assertThat(cards(hear(words).dangerThings())).contains(check);
  }

  /** Sentences that deny a danger have its words; one that denies nothing is none of them. */
  @ParameterizedTest
  @CsvSource({"smoke!!, danger-burning", "trapped, danger-person", "caught, danger-person"})
  void a_word_of_danger_is_enough_at_the_list_of_dangers(String words, String check) {
    List<DangerSayings.Danger> asked =
        Shipped.BASE.checks().values().stream()
            .filter(c -> c.danger())
            .flatMap(c -> c.outcomes().stream().skip(1).map(o -> new DangerSayings.Danger(c, o)))
            .toList();
    assertThat(new DangerSayings(Shipped.HEARING).hear(words, asked))
        .extracting(d -> d.check().id())
        .contains(check);
  }

  @Test
  void the_scene_of_an_accident_is_asked_of_nobody_by_their_words() {
    assertThat(cards(hear("the police are still here").dangerThings()))
        .doesNotContain("danger-scene");
  }

  @Test
  void the_best_comes_first_and_weights_are_shares() {
    List<Heard.Found> findings = hear("it is slow, it squeals and the chain is rusty").findings();
    assertThat(findings).hasSizeGreaterThan(2);
    assertThat(findings).allSatisfy(f -> assertThat(f.weight()).isBetween(0.0, 1.0001));
  }
}
