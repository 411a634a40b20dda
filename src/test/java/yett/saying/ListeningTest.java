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

  /** A gate that turns back while it closes; it moved because it was told to close. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "it closes and then it comes back on its own",
        "the gate closes and comes back by itself",
        "it closes, then opens again on its own",
        "it starts to shut and goes back by itself"
      })
  void a_gate_that_turns_back_does_not_move_by_itself(String words) {
    assertThat(cards(hear(words).dangerThings())).doesNotContain("danger-movement");
    assertThat(cards(hear(words).things()).subList(0, 2)).contains("closes-partway");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it opens again on its own in the night",
        "it closes and opens by itself all day",
        "nobody was there and it came back on its own",
        "it rolls back by itself when I let go of it"
      })
  void one_that_starts_by_itself_does(String words) {
    assertThat(cards(hear(words).dangerThings())).contains("danger-movement");
  }

  @Test
  void a_switch_that_is_down_is_not_one_that_goes_again_and_again() {
    List<String> cards = cards(hear("the switch in the fuse box is down").things());
    assertThat(cards).startsWith("breaker-position").doesNotContain("trips-its-breaker");
    assertThat(new Sayings(Shipped.HEARING).hear("the switch in the fuse box is down", 5))
        .extracting(c -> c.complaint().id())
        .doesNotContain("trips-its-breaker");
    assertThat(cards(hear("one of the little switches is down").things()))
        .startsWith("breaker-position")
        .doesNotContain("as-usual-again");
    assertThat(cards(hear("the switch in the fuse box keeps falling down").things()))
        .startsWith("trips-its-breaker");
  }

  @Test
  void who_rides_on_the_gate_is_in_danger() {
    assertThat(cards(hear("the kids ride on it to and fro").dangerThings()))
        .contains("danger-riding");
    assertThat(cards(hear("he rides his bike through the gate every day").dangerThings()))
        .doesNotContain("danger-riding");
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
