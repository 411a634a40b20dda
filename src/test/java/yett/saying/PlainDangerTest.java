package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.testing.Shipped;

/** What is heard by plain words, whatever the cards have: force, a bang at the switch, a hurt. */
class PlainDangerTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "its stuck shut im late im going to shove it",
        "ill just climb over and yank the thing off",
        "not doing that im pushing it now",
        "can i force it open by hand",
        "hes forcing it with the crowbar",
        "gate wont open were pulling it with the tractor",
        "They've hooked the tractor on",
        "they got it open themselves with the tractor",
        "two of the lads are pushing the gate",
        "I pushed it shut myself",
        "my big sister pushes the gate",
        "shall I climb over the gate?",
        "my husband prised it open with a crowbar",
        "we opened it with the forklift",
        "can't two of us just push it shut, carefully?",
        "and is it ok to push it closed by hand now",
        "how about we shove it shut",
        "forcing it now"
      })
  void a_gate_that_is_forced_is_heard(String line) {
    assertThat(Forcing.in(line)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "they can climb over the wall?",
        "I push it and nothing happens",
        "I pushed the gate button",
        "he pulled the stop button out",
        "the lever was down and I pushed it up",
        "the wind pushes the gate",
        "it pushed my car along",
        "told them not to push it",
        "nobody pushed the gate",
        "It can be pushed open by hand",
        "I pulled the plug",
        "we got the gate open with the key",
        "we open it with the remote in the car",
        "is it ok to push the button",
        "how to push it in again",
        "Tom with the tractor"
      })
  void what_is_no_force_is_none(String line) {
    assertThat(Forcing.in(line)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "can i force it open by hand",
        "im going to shove it",
        "can't two of us just push it shut",
        "is it ok to push it closed by hand now"
      })
  void what_is_only_meant_is_told_from_what_is_done(String line) {
    assertThat(Forcing.isOnlyMeant(line)).isTrue();
    assertThat(Forcing.isOnlyMeant("they got it open with the tractor")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "its tripped again that switch went off with a bang when we put it on",
        "its gone off again",
        "the fuse blew again",
        "the breaker has gone again",
        "the breaker trips every time"
      })
  void a_switch_that_went_off_once_more_is_no_gate_that_works_again(String line) {
    assertThat(Tripped.again(line)).isTrue();
    assertThat(new Tellings(Shipped.HEARING).hear(line).things())
        .doesNotContain(DangerSayings.AS_USUAL);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it works again",
        "the breaker was off, put it on and it works again",
        "it tripped, she put it on and it runs again",
        "the alarm has gone off again",
        "the breaker never tripped again"
      })
  void what_works_again_has_not_gone_off_once_more(String line) {
    assertThat(Tripped.again(line)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"it went off last week too", "yes it has gone before", "it did that twice"})
  void what_went_off_before_is_heard_where_that_is_asked(String line) {
    assertThat(Tripped.before(line)).isTrue();
    assertThat(Tripped.before("no it has never gone off before")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "the switch went off with a bang when we put it on",
        "there was a flash in the fuse box",
        "the lad grazed his knee a bit",
        "my arm is bruised"
      })
  void a_bang_at_the_switch_and_a_hurt_are_dangers(String line) {
    assertThat(new Tellings(Shipped.HEARING).hear(line).dangers()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "there was no bang when we put the switch on",
        "the lamp flashes when the power is on",
        "it nearly cut my hand",
        "the arm is broken",
        "the end of the bar is scratched"
      })
  void what_is_neither_is_not_taken_for_it(String line) {
    assertThat(PlainDanger.in(line)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "HELP the gate wont open there is smoke and my husband is inside",
        "it stopped half way I can see smoke at the box",
        "the yard gate is shut and there are flames behind it"
      })
  void smoke_is_heard_among_other_things(String line) {
    assertThat(new Tellings(Shipped.HEARING).hear(line).dangers())
        .extracting(d -> d.thing().card())
        .containsAnyOf("danger-burning", "danger-fire");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "there is no smoke",
        "there is a fire door beside it",
        "it is a fire brigade key",
        "there is a smoke alarm in the shed",
        "what do we do if there is smoke",
        "we all smoke outside the gate"
      })
  void smoke_that_is_not_there_is_not_heard(String line) {
    assertThat(PlainDanger.in(line)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "when the power is off it rolls open by itself",
        "with the switch off it creeps open on its own",
        "let go of and it's rolling down the slope"
      })
  void a_leaf_that_rolls_away_is_heard_in_any_sentence(String line) {
    assertThat(PlainDanger.in(line)).extracting(Thing::outcome).containsExactly("moved-by-itself");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it no longer rolls shut by itself",
        "it should close by itself and doesn't",
        "the rollers are worn",
        "we roll it open by hand"
      })
  void a_leaf_that_stays_where_it_is_does_not_roll_away(String line) {
    assertThat(PlainDanger.in(line)).isEmpty();
  }
}
