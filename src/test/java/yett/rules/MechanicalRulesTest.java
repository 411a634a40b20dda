package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static yett.rules.Rules.done;
import static yett.rules.Rules.example;
import static yett.rules.Rules.happened;
import static yett.rules.Rules.read;
import static yett.rules.Rules.said;
import static yett.rules.Rules.site;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.Role;
import yett.rules.Conclusion.Expectation;
import yett.rules.Rules.Example;

/** Rules about drive, chain, position, limits, leaf, structure and weather. */
class MechanicalRulesTest extends ShownByExamples {
  static Stream<Example> examples() {
    return Stream.of(
        example("what current the motor draws as it slows into its limit"),
        example("how far a leaf coasts"),
        example("how far out of straight a leaf may be"),
        example("how far the nose of a cantilever may hang", site("support", "cantilever")),
        example("how steep a track may be"),
        example("ice where it freezes", site("usual-temperature", "0 C")),
        example("grease and leaf in hard frost", site("usual-temperature", "-9 C")),
        example("no ice on a warm day", site("usual-temperature", "22 C")),
        example("hot days and busy motors", site("usual-temperature", "33 C")),
        example(
            "a home operator in a busy hour",
            happened("busier-than-before"),
            site("usage-class", "class-ii")),
        example("a heavy leaf tries its drive", site("leaf-mass", "1300 kg")),
        example("a light leaf spares its wheels", site("leaf-mass", "150 kg")),
        example("a wide gate swings its chain past the sensor", site("chain-span", "9 m")),
        example("a private gate stands and rusts", site("usage-class", "class-i")),
        example("a fast leaf stops hard", site("leaf-speed", "0.5 m/s")),
        example("a gate on a slope", site("grade", "-1.5 %")),
        example("heavy vehicles on the track", happened("ground-work")),
        example("a long leaf hangs and bows", site("opening", "9 m")),
        example("a boarded leaf is heavy and catches the wind", site("leaf-face", "boarded")),
        example("salt air at chain and bearings", site("climate", "coastal")),
        example("a cold climate lifts the ground", site("climate", "cold")),
        example("a chain whose link comes apart is not run", said(7, "link-look", "coming-apart")),
        example("a chain whose bracket comes off is not run", read(7, "bracket-gives", "15 mm")),
        example(
            "an operator whose anchors have pulled out is not run",
            said(7, "anchor-bolts", "pulled-out")),
        example(
            "a leaf that rolls away is not released again to look",
            said(7, "released-leaf-rolls", "rolls")),
        example(
            "a leaf that drags everywhere is not light to push",
            said(7, "hard-place", "everywhere"),
            read(8, "push-force", "40 N")),
        example(
            "a leaf does not roll off on the level",
            said(7, "released-leaf-rolls", "rolls"),
            read(8, "track-fall", "0.05 deg")),
        example(
            "a sprocket that turns on its shaft has play",
            said(7, "sprocket-key", "sheared"),
            read(8, "sprocket-play", "1 mm")),
        example(
            "an operator that stands does not rock",
            said(7, "pad-and-bolts", "firm"),
            read(8, "operator-shift", "20 mm")),
        example(
            "a voltage that arrives turns a motor that is whole",
            read(7, "motor-plug-voltage", "23 V"),
            read(8, "motor-resistance", "0.8 ohm"),
            said(9, "what-turns", "motor-still")),
        example("a post that was moved has moved its beam", done("set-post", 1)),
        example("a leaf that was lifted is looked at upright", done("straighten-track", 1)),
        example(
            "a chain that was handled keeps its marker before the sensor",
            done("replace-bracket", 1)),
        example("a sprocket that ran loose has beaten its teeth", done("tighten-sprocket", 1)),
        example(
            "limits that crept are not taught before the reason is known",
            said(7, "how-it-came", "little-by-little"),
            said(8, "limit-shift", "shifted"),
            done("teach-limits", 1)),
        example("where the limit may stand", read(7, "coasting", "300 mm")),
        example("more runs than the operator is built for", read(7, "busiest-hour", "55")),
        example("what slope the track has", read(7, "track-fall", "1.4 deg")));
  }

  /** Numbers in the canonical unit: runs, A, mm, deg. */
  @ParameterizedTest
  @CsvSource({
    "busiest-hour, 0, 30",
    // the upper end of running-current, by hand: 2.5 + 102.97 x 0.25/(0.35 x 24)
    "end-current, 0, 5.565",
    // 0.25 m/s: 25 mm + 0.0625/3 m, and 75 mm + 0.0625 m (v t + v2/2a, mechanics textbook)
    "coasting, 45.83, 137.5",
    "leaf-bow, 0, 16.67",
    // a free leaf rolls where tan a = 0.01, a = 0.5729 deg (mechanics textbook)
    "track-fall, 0, 0.5729",
  })
  void the_usual_gate_has_these_ranges(String check, double low, double high) {
    Expectation range = range(check);
    assertThat(range.low()).isCloseTo(low, within(0.01));
    assertThat(range.high()).isCloseTo(high, within(0.01));
  }

  @Test
  void ranges_go_with_the_site() {
    assertThat(range("busiest-hour", site("usage-class", "class-i")).high()).isEqualTo(10);
    assertThat(range("nose-drop", site("support", "cantilever")).high()).isEqualTo(25);
    // 2 % built in and 1 %: atan 0.03
    assertThat(range("track-fall", site("grade", "-2 %")).high()).isCloseTo(1.718, within(0.001));
    assertThat(range("coasting", site("leaf-speed", "0.5 m/s")).high()).isCloseTo(400, within(0.1));
  }

  @ParameterizedTest
  @CsvSource({"-9, 6", "0, 6", "10,", "25, 0.2"})
  void ice_goes_with_the_weather(String degrees, Double factor) {
    Map<String, Double> factors =
        Rules.judge(site("usual-temperature", degrees + " C")).oddsFactors();
    assertThat(factors.get("ice-in-track")).isEqualTo(factor);
  }

  @Test
  void a_cold_snap_is_not_counted_twice() {
    Map<String, Double> snap = Rules.judge(happened("cold-snap")).oddsFactors();
    assertThat(Rules.judge(happened("cold-snap"), site("usual-temperature", "-9 C")).oddsFactors())
        .isEqualTo(snap);
  }

  @Test
  void a_chain_that_may_let_go_is_not_run_before_it_is_mended() {
    Fact apart = said(7, "link-look", "coming-apart");
    assertThat(forbidden(apart)).contains("chain-jumps", "what-turns", "limit-error-closed");
    assertThat(forbidden(apart)).doesNotContain("chain-sag");
    assertThat(forbidden(apart, done("renew-connecting-link", 1))).doesNotContain("chain-jumps");
    assertThat(forbidden(apart, said(9, "link-look", "right"))).doesNotContain("chain-jumps");
    assertThat(forbidden(said(7, "link-look", "doubtful"))).doesNotContain("chain-jumps");
  }

  @Test
  void a_leaf_that_rolls_is_let_go_again_only_once_the_slope_is_right() {
    Fact rolls = said(7, "released-leaf-rolls", "rolls");
    assertThat(forbidden(rolls)).contains("push-force", "wheels-look");
    assertThat(forbidden(rolls)).doesNotContain("level-track", "released-leaf-rolls");
    assertThat(forbidden(rolls, done("level-track", 1))).doesNotContain("push-force");
  }

  @Test
  void a_caller_pushes_out_of_the_track_what_was_seen_there_and_nobody_else_does() {
    Fact caller = new Fact.Person(Role.CALLER);
    Fact seen = said(1, "debris-seen", "something");
    assertThat(forbidden(caller)).contains("push-out-of-track");
    assertThat(forbidden(caller, said(1, "debris-seen", "clean"))).contains("push-out-of-track");
    assertThat(forbidden(caller, seen)).doesNotContain("push-out-of-track");
    assertThat(forbidden(new Fact.Person(Role.TECHNICIAN), seen))
        .contains("push-out-of-track")
        .doesNotContain("clear-track");
  }

  private static List<String> forbidden(Fact... facts) {
    return Rules.judge(facts).unavailabilities().stream()
        .map(Conclusion.Unavailable::card)
        .toList();
  }

  private static Expectation range(String check, Fact... facts) {
    return Rules.judge(facts).conclusions().stream()
        .filter(Expectation.class::isInstance)
        .map(Expectation.class::cast)
        .filter(e -> e.check().equals(check))
        .findFirst()
        .orElseThrow();
  }
}
