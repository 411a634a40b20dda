package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static yett.rules.Rules.example;
import static yett.rules.Rules.read;
import static yett.rules.Rules.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import yett.knowledge.Check;
import yett.rules.Conclusion.Expectation;
import yett.rules.Rules.Example;

class ExpectationRulesTest extends ShownByExamples {
  static Stream<Example> examples() {
    return Stream.of(
        example("how far the chain hangs"),
        example("how far the chain hung when the gate was in order", was("chain-sag", 60)),
        example("what the motor drew when the gate was in order", was("running-current", 3.1)),
        example("how long a run took when the gate was in order", was("travel-time", 24)),
        example(
            "what force kept the leaf rolling when the gate was in order", was("push-force", 60)),
        example(
            "how far the chain moved by hand when it hung as it did in order",
            was("chain-sag", 60)),
        example(
            "how low the batteries dipped when the gate was in order",
            was("battery-running-voltage", 24.6)),
        example("what force keeps a cantilevered leaf rolling", site("support", "cantilever")),
        example("what a lithium pack is charged with", site("batteries", "lithium")),
        example("what a lithium pack has at rest", site("batteries", "lithium")),
        example("how low a lithium pack dips", site("batteries", "lithium")),
        example("how far a lithium pack falls", site("batteries", "lithium")),
        example(
            "what the supply gives at the mains that was read",
            read(7, "mains-at-terminals", "221 V")));
  }

  private static Fact was(String check, double value) {
    return new Fact.Baseline(check, value, "2025-03-02");
  }

  @Test
  void a_reading_is_judged_by_what_this_gate_read_when_it_was_in_order_where_that_is_closer() {
    Fact now = read(7, "chain-sag", "85 mm");
    assertThat(Rules.judge(now).finding(7).orElseThrow().outcome()).isEqualTo("ordinary");
    Judgement known = Rules.judge(now, was("chain-sag", 50));
    assertThat(known.findings()).hasSize(1);
    assertThat(known.finding(7).orElseThrow().outcome()).isEqualTo("slack");
    assertThat(known.expectation("chain-sag").orElseThrow().high()).isCloseTo(65, within(1e-9));
  }

  /** Hand movement of a parabola of sag s: 4 s / sqrt(3) (geometry), give or take 30 %. */
  @Test
  void what_one_reading_was_in_order_bounds_another_that_hangs_on_it() {
    Expectation lift =
        Rules.judge(was("chain-sag", 60)).conclusions().stream()
            .filter(Expectation.class::isInstance)
            .map(Expectation.class::cast)
            .filter(e -> e.check().equals("chain-hand-lift") && e.how().contains("in order"))
            .findFirst()
            .orElseThrow();
    assertThat(lift.low()).isCloseTo(0.7 * 138.564, within(0.01));
    assertThat(lift.high()).isCloseTo(1.3 * 138.564, within(0.01));
  }

  /** The usual site, and ten that differ from it in what the formulas take. */
  static Stream<List<Fact>> sites() {
    return Stream.of(
        List.of(),
        List.of(site("batteries", "flooded"), site("usual-temperature", "-25 C")),
        List.of(site("batteries", "none"), site("supply-volts", "120")),
        List.of(site("supply-volts", "208"), site("feeder-size", "awg-14")),
        List.of(site("supply-volts", "240"), site("feeder-size", "awg-8")),
        List.of(site("chain-size", "35"), site("chain-span", "1.2 m"), site("opening", "1.1 m")),
        List.of(site("chain-size", "08b"), site("chain-span", "21 m"), site("opening", "20 m")),
        List.of(site("support", "cantilever"), site("leaf-mass", "2900 kg"), site("grade", "-4 %")),
        List.of(site("leaf-mass", "60 kg"), site("leaf-speed", "0.9 m/s"), site("grade", "5 %")),
        List.of(site("marker", "none"), site("beams", "none"), site("chain-size", "10b")),
        List.of(site("feeder-length", "450 m"), site("feeder-size", "mm2-1-5")));
  }

  @ParameterizedTest
  @MethodSource("sites")
  void each_check_that_can_be_made_and_is_judged_by_this_gate_has_exactly_one_expectation(
      List<Fact> site) {
    Judgement judgement = Rules.judge(site);
    Set<String> impossible =
        judgement.unavailabilities().stream()
            .filter(u -> u.reason().rule().equals("a check that does not apply to this site"))
            .map(Conclusion.Unavailable::card)
            .collect(Collectors.toSet());
    Set<String> needed =
        Rules.BASE.checks().values().stream()
            .filter(Check::measured)
            .filter(Interpretation::relative)
            .map(Check::id)
            .filter(id -> !impossible.contains(id))
            .collect(Collectors.toSet());
    List<Expectation> made =
        judgement.conclusions().stream()
            .filter(Expectation.class::isInstance)
            .map(Expectation.class::cast)
            .toList();
    assertThat(needed).hasSizeGreaterThan(15);
    assertThat(made).extracting(Expectation::check).containsExactlyInAnyOrderElementsOf(needed);
    assertThat(made).allSatisfy(e -> assertThat(e.low()).isLessThan(e.high()));
  }

  @ParameterizedTest
  @MethodSource("sites")
  void a_reading_in_the_middle_of_its_expectation_is_ordinary(List<Fact> site) {
    assertThat(Rules.judge(site).conclusions())
        .filteredOn(Expectation.class::isInstance)
        .hasSizeGreaterThan(10)
        .map(Expectation.class::cast)
        .allSatisfy(
            e -> {
              Check check = Rules.BASE.checks().get(e.check());
              List<Double> weights =
                  Interpretation.ofReading(check, (e.low() + e.high()) / 2, e.low(), e.high());
              assertThat(Interpretation.likeliest(check, weights))
                  .isEqualTo(check.outcomes().get(0).id());
            });
  }

  /** Numbers in the canonical unit: mm, V, A, N, s. */
  @ParameterizedTest
  @CsvSource({
    // hang of a 2 % to 4 % hand movement, sqrt(3)/4 of it (geometry of the parabola)
    "chain-sag,               45.03,  90.07",
    "chain-hand-lift,         104,    208",
    // 24 pitches of 1/2 in, 12.000 in new, 12.18 in at 1.5 % (ASME B29.1; chain handbook)
    "chain-length,            304.8,  309.372",
    // a thousandth of 5.2 m; 1 mm below a metre (chain handbook, alignment)
    "sprocket-offset,         0,      5.2",
    "idler-offset,            0,      1",
    // 350 kg x 9.80665 m/s2 x 0.01 and 0.03 (mechanics textbook)
    "push-force,              34.32,  102.97",
    "breakaway-force,         51.48,  257.42",
    "travel-time,             22,     26",
    // 1.5 + 34.32 x 0.25/(0.6 x 24) and 2.5 + 102.97 x 0.25/(0.35 x 24)
    "running-current,         2.096,  5.565",
    "motor-alone-current,     1,      3",
    // EN 50160: 230 V -> 207 V to 253 V
    "mains-at-terminals,      207,    253",
    "selector-margin,         0,      23",
    "dc-supply-voltage,       29,     34",
    // 1 % of 230 V, as the drop itself, 1.47 A x 60 m x 7.27 mohm/m, is 0.64 V
    "supply-under-load,       0,      2.3",
    // AGM 12.6 V a block at 75 % (published chart)
    "battery-rest-voltage,    25.2,   27.2",
    "battery-after-charge,    25.2,   27.2",
    // 12 x (2.45 + 0.05) V at 15 degC (battery data sheets)
    "charging-voltage,        26.6,   30.0",
    "battery-running-voltage, 23.5,   26",
    "battery-fall,            0,      0.6",
    "marker-gap,              3,      10",
    "receiver-supply,         20.4,   29",
    "beam-supply,             22,     29",
    "limit-error-closed,      0,      25",
    "limit-error-open,        0,      25",
    "stop-spread,             0,      20",
  })
  void the_usual_gate_has_these_ranges(String check, double low, double high) {
    assertRange(Rules.judge(), check, low, high);
  }

  @ParameterizedTest
  @CsvSource({
    "chain-span,    chain-sag chain-hand-lift sprocket-offset",
    "leaf-mass,     push-force breakaway-force running-current motor-alone-current"
        + " supply-under-load battery-fall end-current",
    "feeder-length, supply-under-load feeder-loop-resistance",
    "opening,       travel-time limit-error-closed limit-error-open stop-spread leaf-bow",
    "supply-volts,  mains-at-terminals selector-margin dc-supply-voltage supply-under-load"
        + " panel-voltage leakage-current",
    "supply,        receiver-supply accessory-voltage standing-current",
  })
  void an_expectation_goes_with_the_answer_that_it_rests_on(String question, String checks) {
    List<Conclusion> lost = new ArrayList<>(Rules.judge().conclusions());
    lost.removeAll(Rules.afterForgetting(question).conclusions());
    assertThat(lost)
        .filteredOn(Expectation.class::isInstance)
        .extracting(c -> ((Expectation) c).check())
        .containsExactlyInAnyOrder(checks.split(" "));
  }

  @Test
  void a_thicker_chain_is_judged_by_its_own_pitch() {
    assertRange(
        Rules.judge(site("chain-size", "60")), "chain-length", 24 * 19.05, 24 * 19.05 * 1.015);
  }

  @Test
  void a_slope_adds_its_share_of_the_weight_uphill_whichever_way_that_is() {
    // 350 kg on 2 %: 3432 N x (0.01 + 0.02) and (0.03 + 0.02), cosine of 1.1 deg left out
    assertRange(Rules.judge(site("grade", "2 %")), "push-force", 102.95, 171.58);
    assertRange(Rules.judge(site("grade", "-2 %")), "push-force", 102.95, 171.58);
  }

  @Test
  void a_slope_takes_its_share_once_when_a_leaf_starts() {
    // 400 kg on 5 %: 3922.66 N x (1.5 x 0.01 x 0.99875 + 0.04994) and x (2.5 x 0.03 x ... ), by
    // hand
    for (String grade : List.of("5 %", "-5 %")) {
      assertRange(
          Rules.judge(site("grade", grade), site("leaf-mass", "400 kg")),
          "breakaway-force",
          254.65,
          489.72);
    }
    assertRange(
        Rules.judge(site("support", "cantilever"), site("leaf-mass", "400 kg")),
        "breakaway-force",
        3922.66 * 1.5 * 0.01,
        3922.66 * 2.5 * 0.05);
  }

  @Test
  void american_supplies_keep_five_percent() {
    // ANSI C84.1 range A: 120 V -> 114 V to 126 V; 240 V -> 228 V to 252 V
    assertRange(Rules.judge(site("supply-volts", "120")), "mains-at-terminals", 114, 126);
    assertRange(Rules.judge(site("supply-volts", "240")), "mains-at-terminals", 228, 252);
  }

  @Test
  void a_supply_follows_the_mains_that_was_read_last() {
    // ideal transformer: 208 V on a 240 V tap gives 20.8 V of 24 V
    assertRange(
        Rules.judge(
            site("supply-volts", "240"),
            read(3, "mains-at-terminals", "240 V"),
            read(5, 1, yett.knowledge.Role.ELECTRICIAN, "mains-at-terminals", "208 V")),
        "dc-supply-voltage",
        29 * 20.8 / 24,
        34 * 20.8 / 24);
  }

  @Test
  void mains_that_is_missing_does_not_lower_what_the_supply_ought_to_give() {
    assertRange(Rules.judge(read(3, "mains-at-terminals", "2 V")), "dc-supply-voltage", 29, 34);
  }

  @Test
  void float_falls_with_warmth_and_is_held_in_the_cold() {
    // operation manual of a valve-regulated battery: 13.32 V a block at 35 degC, 0.4 V less a pair
    assertRange(Rules.judge(site("usual-temperature", "35 C")), "charging-voltage", 26.24, 28.8);
    assertRange(
        Rules.judge(site("usual-temperature", "-10 C")), "charging-voltage", 26.6, 12 * 2.55);
  }

  /**
   * ANSI C84.1: 5 % either way; EN 50160: a tenth; 101 V and 6 V either way in Japan, from memory.
   */
  @ParameterizedTest
  @CsvSource({"100, 95, 107", "120, 114, 126", "127, 114.3, 139.7", "220, 198, 242"})
  void mains_of_other_systems_has_other_limits(String nominal, double low, double high) {
    assertRange(Rules.judge(site("supply-volts", nominal)), "mains-at-terminals", low, high);
  }

  /** Eight cells; 3.3 V at rest, 3.65 V at most, by data sheets, from memory. */
  @ParameterizedTest
  @CsvSource({
    "battery-rest-voltage, 26.4, 27.6",
    "battery-after-charge, 26.4, 27.6",
    "charging-voltage, 27.2, 29.2",
    "battery-running-voltage, 25, 27.6",
    "battery-fall, 0, 0.6",
  })
  void a_lithium_pack_has_ranges_of_its_own(String check, double low, double high) {
    assertRange(Rules.judge(site("batteries", "lithium")), check, low, high);
  }

  @Test
  void flooded_batteries_rest_lower() {
    // 12.45 V a block at 75 % (usual trade chart, from memory)
    assertRange(Rules.judge(site("batteries", "flooded")), "battery-rest-voltage", 24.9, 26.3);
  }

  @Test
  void a_long_thin_feeder_is_allowed_the_advised_three_percent() {
    // NFPA 70 210.19(A) informational note: 3 % of 120 V
    assertRange(
        Rules.judge(
            site("supply-volts", "120"),
            site("feeder-size", "awg-14"),
            site("feeder-length", "120 m")),
        "supply-under-load",
        0,
        3.6);
  }

  @Test
  void an_expectation_tells_where_it_comes_from_in_the_units_of_the_trade() {
    Judgement judgement = Rules.judge();
    assertThat(judgement.expectation("chain-sag").orElseThrow().how())
        .isEqualTo("0.87 % to 1.73 % of a span of 5.2 m: a hand movement of 2 % to 4 %");
    assertThat(judgement.expectation("supply-under-load").orElseThrow().how())
        .isEqualTo("1.5 A through 30 m of 2.5 mm2 lose 0.6 V; at least 1 %, at most 3 % of 230 V");
    assertThat(judgement.expectation("travel-time").orElseThrow().how())
        .isEqualTo("5 m at 0.25 m/s, plus 2 s to 6 s for the slow-downs");
  }

  private static void assertRange(Judgement judgement, String check, double low, double high) {
    Expectation e = judgement.expectation(check).orElseThrow();
    assertThat(e.low()).as(check).isCloseTo(low, within(0.03));
    assertThat(e.high()).as(check).isCloseTo(high, within(0.03));
  }
}
