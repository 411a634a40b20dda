package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static yett.rules.Rules.complained;
import static yett.rules.Rules.example;
import static yett.rules.Rules.happened;
import static yett.rules.Rules.site;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.Role;
import yett.rules.Conclusion.Odds;
import yett.rules.Rules.Example;

class OddsRulesTest extends ShownByExamples {
  static Stream<Example> examples() {
    return Stream.of(
        example("the chain hangs lower from year to year", moved("chain-sag", 6)),
        example("the bracket gives more from year to year", moved("bracket-gives", 1)),
        example("the motor draws more from year to year", moved("running-current", 0.4)),
        example("the leaf is harder to push from year to year", moved("push-force", 20)),
        example("a run takes longer from year to year", moved("travel-time", 1.5)),
        example(
            "the batteries dip lower from year to year", moved("battery-running-voltage", -0.4)),
        example("the batteries get less charge from year to year", moved("charging-voltage", -0.3)),
        example("the earth gets worse from year to year", moved("earth-resistance", 3)),
        example("new batteries are seldom worn", site("battery-age", "1")),
        example("batteries of four years begin to fail", site("battery-age", "5")),
        example("batteries of six years are mostly worn", site("battery-age", "6")),
        example("batteries of nine years are worn", site("battery-age", "11")),
        example(
            "cold finds out old batteries",
            site("battery-age", "5"),
            site("usual-temperature", "-8 C")),
        example("heat wears batteries", site("usual-temperature", "41 C")),
        example(
            "a dead gate of which nobody has seen the batteries",
            new Fact.Person(Role.CALLER),
            complained("does-nothing")),
        example("a slope drains the batteries", site("grade", "-2.5 %")),
        example(
            "a feeder that loses more than it may",
            site("supply-volts", "120"),
            site("feeder-size", "awg-14"),
            site("feeder-length", "200 m")),
        example(
            "a feeder near what it may lose",
            site("supply-volts", "120"),
            site("feeder-size", "awg-12"),
            site("feeder-length", "90 m")),
        example("a feeder with plenty to spare", site("feeder-length", "5 m")),
        example("208 V is often fed into a tap for 240 V", site("supply-volts", "208")),
        example(
            "lightning comes in over a long cable",
            happened("thunderstorm"),
            site("feeder-length", "150 m")),
        example(
            "lightning trips a gate that lives on mains alone",
            happened("thunderstorm"),
            site("batteries", "none")),
        example(
            "without batteries an outage is both supplies off",
            happened("mains-outage"),
            site("batteries", "none")),
        example(
            "without a marker lost power loses the limits",
            happened("both-supplies-off"),
            site("marker", "none")),
        example(
            "a chain worked on without a marker",
            happened("chain-worked-on"),
            site("marker", "none")),
        example("a long new chain beds in", happened("chain-worked-on"), site("chain-span", "9 m")),
        example(
            "a chain too light for its leaf",
            site("chain-size", "41"),
            site("leaf-mass", "1500 kg")),
        example("a heavy leaf pulls its chain long", site("leaf-mass", "1200 kg")),
        example("a private gate wears little", site("usage-class", "class-i")),
        example(
            "a busy gate on its first batteries",
            happened("busier-than-before"),
            site("battery-age", "5")),
        example("a cantilever has no track to fill", site("support", "cantilever")),
        example("a fast leaf strikes harder", site("leaf-speed", "0.5 m/s")),
        example("two beams get dirty more often than one", site("beams", "two")),
        example("the public pulls at things", site("usage-class", "class-ii")));
  }

  /** Odds that are moved; a cause that cannot be on the site is another matter. */
  private static List<Odds> moved(Judgement judgement) {
    return judgement.odds().stream().filter(o -> o.factor() > 0).toList();
  }

  /** A slope a year that is known to a half of itself. */
  private static Fact moved(String check, double slope) {
    double reach = Math.abs(slope) / 2;
    return new Fact.Trend(check, slope, slope - reach, slope + reach, "moves");
  }

  @Test
  void a_slope_that_may_be_none_says_nothing_and_the_same_drag_counts_once() {
    Fact unsure = new Fact.Trend("chain-sag", 6, -1, 13, "no sure trend");
    assertThat(Rules.judge(unsure).oddsFactors()).isEqualTo(Rules.judge().oddsFactors());
    double usual = Rules.judge().oddsFactors().getOrDefault("wheel-worn", 1.0);
    assertThat(
            Rules.judge(moved("push-force", 20), moved("running-current", 0.4))
                .oddsFactors()
                .get("wheel-worn"))
        .isEqualTo(2 * usual);
  }

  @Test
  void the_usual_answers_leave_the_cards_own_odds_alone() {
    assertThat(moved(Rules.judge())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0, 0.35", "1, 0.35", "4, 2", "5, 2", "6, 4.5", "8, 4.5", "9, 9", "20, 9"})
  void worn_batteries_go_with_age_one_step_at_a_time(String years, double factor) {
    assertThat(factors(site("battery-age", years))).containsEntry("batteries-worn", factor);
  }

  @ParameterizedTest
  @CsvSource({"2", "3"})
  void batteries_in_their_best_years_move_nothing(String years) {
    assertThat(moved(Rules.judge(site("battery-age", years)))).isEmpty();
  }

  @Test
  void batteries_that_were_changed_lately_are_not_judged_by_the_old_date() {
    assertThat(moved(Rules.judge(happened("batteries-changed"), site("battery-age", "11"))))
        .filteredOn(o -> o.cause().equals("batteries-worn"))
        .extracting(Odds::reason)
        .extracting(Reason::rule)
        .containsOnly("what happened lately moves the odds");
  }

  @Test
  void a_cold_snap_is_not_counted_twice() {
    Map<String, Double> snap = factors(happened("cold-snap"));
    assertThat(factors(happened("cold-snap"), site("usual-temperature", "-9 C"))).isEqualTo(snap);
  }

  @Test
  void both_supplies_off_is_not_counted_twice_on_a_site_without_batteries() {
    Map<String, Double> both =
        factors(happened("both-supplies-off"), happened("mains-outage"), site("batteries", "agm"));
    assertThat(
            factors(
                happened("both-supplies-off"), happened("mains-outage"), site("batteries", "none")))
        .containsEntry("marker-lost", both.get("marker-lost"));
  }

  @Test
  void a_feeder_is_counted_in_one_class_only_and_says_what_it_loses() {
    for (int metres = 1; metres <= 500; metres += 20) {
      Judgement judgement =
          Rules.judge(
              site("supply-volts", "120"),
              site("feeder-size", "awg-14"),
              site("feeder-length", metres + " m"));
      assertThat(judgement.odds().stream().filter(o -> o.cause().equals("feeder-undersized")))
          .hasSizeLessThanOrEqualTo(1);
    }
    // 2.82 A through 400 m of 3.14 ohm/kft at 15 degC: 8.3 ohm/km x 0.4 km x 2.82 A = 9.4 V of 120
    // V
    assertThat(
            moved(
                Rules.judge(
                    site("supply-volts", "120"),
                    site("feeder-size", "awg-14"),
                    site("feeder-length", "200 m"))))
        .filteredOn(o -> o.cause().equals("feeder-undersized"))
        .singleElement()
        .extracting(o -> o.reason().because())
        .asString()
        .startsWith("the feeder loses about 7.8 %");
  }

  private static Map<String, Double> factors(Fact... facts) {
    return Rules.judge(facts).oddsFactors();
  }
}
