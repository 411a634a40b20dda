package yett.interview.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.testing.WithEffects;

class EffectSignsTest {
  private static final double[] NOTHING = {};

  /** Looks as "check outcome", in their order. */
  private static Trail trail(String... looks) {
    return new Trail(
        NOTHING,
        Arrays.stream(looks)
            .map(look -> look.split(" "))
            .map(l -> new Trail.Move(1, l[0], l[1], "", "", NOTHING, NOTHING))
            .toList());
  }

  private static List<EffectSigns> signs(String cause, String... looks) {
    return EffectSigns.of(WithEffects.BASE.causes().get(cause), trail(looks), WithEffects.BASE);
  }

  private static List<String> told(String cause, String... looks) {
    return signs(cause, looks).stream()
        .map(s -> s.effect().id() + " seen " + words(s.seen()) + " not " + words(s.ordinary()))
        .toList();
  }

  private static String words(List<EffectSigns.Sign> signs) {
    return signs.stream().map(s -> s.check().id()).collect(Collectors.joining(", ", "[", "]"));
  }

  @Test
  void looks_stand_with_the_effect_that_is_likeliest_to_have_made_them() {
    // A high current: 0.99 x 0.6 by the force, 0.594 x 0.2 by the heat.
    assertThat(told("rollers-worn", "slow said", "running-current high", "motor-touch hot"))
        .containsExactly(
            "more-force seen [slow, running-current] not []", "runs-hot seen [motor-touch] not []");
    assertThat(signs("rollers-worn", "slow said"))
        .singleElement()
        .satisfies(s -> assertThat(s.chance()).isEqualTo(0.99))
        // 10 log10 (0.995 x 0.4 + 0.0025) / (0.995 x 0.03 + 0.0025)
        .satisfies(s -> assertThat(s.seen().get(0).decibans()).isCloseTo(10.928, within(0.001)));
  }

  @Test
  void an_effect_that_is_expected_and_not_seen_comes_after_those_seen() {
    assertThat(told("rollers-worn", "motor-touch cool", "slow said"))
        .containsExactly("more-force seen [slow] not []", "runs-hot seen [] not [motor-touch]");
    assertThat(told("rollers-worn", "running-current ordinary", "slow said"))
        .containsExactly("more-force seen [slow] not [running-current]");
  }

  @Test
  void an_effect_that_the_cause_has_seldom_is_told_only_where_it_is_seen() {
    // With track-dirty the heat is there in 1 - 0.75 (1 - 0.9 x 0.6) = 0.655 of cases.
    assertThat(told("track-dirty", "motor-touch cool"))
        .containsExactly("runs-hot seen [] not [motor-touch]");
    assertThat(told("track-dirty", "leaf-look quiet")).isEmpty();
    assertThat(told("track-dirty", "leaf-look shakes"))
        .containsExactly("leaf-shakes seen [leaf-look] not []");
    assertThat(told("chain-slack", "slow said", "running-current high")).isEmpty();
  }

  @Test
  void what_was_not_said_counts_for_nothing_and_a_second_look_neither() {
    assertThat(told("rollers-worn", "slow unsaid", "noisy not-said")).isEmpty();
    assertThat(told("rollers-worn", "motor-touch hot", "tighten-chain done", "motor-touch cool"))
        .containsExactly("runs-hot seen [motor-touch] not []");
  }

  @Test
  void a_row_of_the_causes_own_may_speak_for_the_effect_too() {
    assertThat(told("rollers-worn", "leaf-look shakes"))
        .containsExactly("leaf-shakes seen [leaf-look] not []");
  }
}
