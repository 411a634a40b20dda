package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChainTest {
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final double POUND_FORCE = 4.4482216152605;

  private static Offset<Double> fourDigits(double expected) {
    return within(Math.abs(expected) * 5e-4);
  }

  // Worked by hand from the textbook formulas of the hanging cable (parabola and catenary), four
  // digits: mass kg/m, span, sag, H parabola, H catenary, S parabola, S catenary.
  @ParameterizedTest
  @CsvSource({
    "0.61, 5, 0.10, 186.9, 187.0, 5.005333, 5.005329",
    "0.61, 5, 0.20, 93.47, 93.67, 5.021333, 5.021270",
    "1.01, 6, 0.15, 297.1, 297.4, 6.010000, 6.009988",
    "0.61, 4, 0.16, 74.78, 74.93, 4.017067, 4.017016",
    "0.61, 4, 0.80, 14.96, 15.69, 4.426667, 4.398873",
  })
  void sag_gives_tension_and_length_by_parabola_and_catenary(
      double mass,
      double span,
      double sag,
      double parabola,
      double catenary,
      double length,
      double catenaryLength) {
    double weight = mass * 9.80665;

    assertThat(ChainSag.tension(weight, span, sag)).isCloseTo(parabola, fourDigits(parabola));
    assertThat(ChainSag.catenaryTension(weight, span, sag))
        .isCloseTo(catenary, fourDigits(catenary));
    assertThat(ChainSag.length(span, sag)).isCloseTo(length, within(6e-7));
    assertThat(ChainSag.catenaryLength(span, sag)).isCloseTo(catenaryLength, within(6e-7));
  }

  // Worked in pounds and inches from the same textbook formula: chain number, span ft, sag in, lbf.
  @ParameterizedTest
  @CsvSource({"40, 12, 3, 29.52", "40, 12, 6, 14.76", "41, 20, 4, 42.00"})
  void tension_agrees_with_the_formula_worked_in_pounds(
      String number, double feet, double inches, double poundsForce) {
    double weight = RollerChain.numbered(number).orElseThrow().weightPerLength();

    assertThat(ChainSag.tension(weight, feet * FOOT, inches * INCH) / POUND_FORCE)
        .isCloseTo(poundsForce, fourDigits(poundsForce));
  }

  @Test
  void the_catenary_of_a_nearly_straight_chain_is_the_parabola() {
    assertThat(ChainSag.catenaryTension(5.982, 5, 1e-4))
        .isCloseTo(ChainSag.tension(5.982, 5, 1e-4), within(1e-3));
    assertThat(ChainSag.catenaryLength(5, 1e-4)).isCloseTo(5, within(1e-8));
  }

  // Worked by hand from 8 (s1² - s2²)/(3 L): span, sags, mm.
  @ParameterizedTest
  @CsvSource({
    "5, 0.20, 0.10, 16.00",
    "5, 0.25, 0.10, 28.00",
    "6, 0.30, 0.12, 33.60",
    "4, 0.16, 0.08, 12.80",
    "4.8768, 0.1524, 0.0762, 9.525", // 16 ft, 6 in to 3 in: 0.3750 in
  })
  void take_up_brings_one_sag_to_another(double span, double from, double to, double millimetres) {
    assertThat(ChainSag.takeUp(span, from, to) * 1000).isCloseTo(millimetres, within(1e-6));
  }

  // Worked by hand: span, sag, length removed, sag left; the last two in inches (144 in, 6 in, one
  // half-inch pitch; 240 in, 10 in, two pitches).
  @ParameterizedTest
  @CsvSource({
    "5, 0.20, 0.0127, 0.1272",
    "5, 0.30, 0.0127, 0.2573",
    "5, 0.30, 0.0254, 0.2059",
    "6, 0.40, 0.0508, 0.2138",
    "3.6576, 0.1524, 0.0127, 0.0762",
    "6.096, 0.254, 0.0254, 0.08032",
  })
  void removing_links_lowers_the_sag(double span, double sag, double removed, double left) {
    assertThat(ChainSag.sagAfterChange(span, sag, -removed).orElseThrow())
        .isCloseTo(left, fourDigits(left));
  }

  @Test
  void a_chain_too_short_to_reach_has_no_sag() {
    // Worked by hand: on 5 m one half-inch pitch needs 154.3 mm of sag, two need 218.2 mm.
    assertThat(ChainSag.sagAfterChange(5, 0.15, -0.0254)).isEmpty();
    assertThat(ChainSag.sagAfterChange(5, 0.1542, -0.0127)).isEmpty();
    assertThat(ChainSag.sagAfterChange(5, 0.1544, -0.0127)).isPresent();
    assertThat(ChainSag.sagAfterChange(5, 0.2183, -0.0254)).isPresent();
  }

  @Test
  void hand_movement_and_sag_are_two_ways_to_see_one_length() {
    // Independent of the series: exact sides of the triangle against the exact catenary.
    double span = 5;
    double movement = 0.04 * span;
    double triangle = 2 * Math.hypot(span / 2, movement / 2);

    double sag = ChainSag.sagForMovement(movement);

    assertThat(ChainSag.catenaryLength(span, sag)).isCloseTo(triangle, within(2e-6));
    assertThat(sag).isCloseTo(0.4330 * movement, within(1e-4 * movement));
    assertThat(ChainSag.movementForSag(sag)).isCloseTo(movement, within(1e-15));
  }

  @Test
  void usual_sag_is_that_of_two_to_four_percent_movement() {
    // Complete Guide to Chain, 7.1.2: 2 to 4 % of the span in total movement; on 5 m 100 to 200 mm.
    Range usual = ChainSag.usualSag(5);

    assertThat(ChainSag.movementForSag(usual.low())).isCloseTo(0.100, within(1e-12));
    assertThat(ChainSag.movementForSag(usual.high())).isCloseTo(0.200, within(1e-12));
    assertThat(usual.contains(0.05)).isTrue();
    assertThat(usual.contains(0.10)).isFalse();
  }

  // Worked by hand from 100 (M - n P)/(n P): measured, pitches, pitch, percent; the last in inches
  // (No. 41, 24 pitches of 1/2 in, 12.21 in).
  @ParameterizedTest
  @CsvSource({
    "0.3092, 24, 0.0127, 1.444",
    "0.1542, 12, 0.0127, 1.181",
    "0.3223, 20, 0.015875, 1.512",
    "0.310134, 24, 0.0127, 1.750",
    "0.3048, 24, 0.0127, 0",
  })
  void elongation_is_growth_over_nominal(
      double measured, int pitches, double pitch, double percent) {
    assertThat(ChainElongation.percent(measured, pitches, pitch)).isCloseTo(percent, within(6e-4));
  }

  // 12 in of 1/2 in pitch: 1.5 % is 0.18 in and 3 % is 0.36 in (one printed guide mixes the two
  // up).
  @ParameterizedTest
  @CsvSource({"1.5, 12.18", "3, 12.36", "0, 12"})
  void a_limit_is_a_length_on_the_tape(double percent, double inches) {
    assertThat(ChainElongation.lengthAt(percent, 24, 0.0127) / INCH)
        .isCloseTo(inches, within(1e-9));
  }

  // Chain handbooks and wear notes that refer to ASME B29.1: 3 % up to 66 teeth, 200/N above, 1.5 %
  // with fixed centres.
  @ParameterizedTest
  @CsvSource({
    "12, false, 3",
    "60, false, 3",
    "67, false, 2.985",
    "80, false, 2.5",
    "15, true, 1.5",
    "200, true, 1",
  })
  void replacement_limit_falls_with_large_sprockets(int teeth, boolean fixed, double percent) {
    assertThat(ChainElongation.limitPercent(teeth, fixed)).isCloseTo(percent, within(5e-4));
  }

  // ASME B29.1 minimum ultimate strength in N (1760, 1500, 3125, 4880, 7030 lbf) and catalogue
  // mass;
  // 08B and 10B: ISO 606, strength from memory, mass of a metric chain table.
  @ParameterizedTest
  @CsvSource({
    "35, 9.525, 7829, 0.3125",
    "41, 12.70, 6672, 0.4167",
    "40, 12.70, 13900, 0.6101",
    "50, 15.875, 21710, 1.012",
    "60, 19.05, 31270, 1.488",
    "08B, 12.70, 17800, 0.70",
    "10B, 15.875, 22200, 0.91",
  })
  void sizes_are_those_of_the_standards(String number, double pitch, double strength, double mass) {
    RollerChain chain = RollerChain.numbered(number).orElseThrow();

    assertThat(chain.pitch() * 1000).isCloseTo(pitch, within(1e-9));
    assertThat(chain.minimumUltimateStrength()).isCloseTo(strength, fourDigits(strength));
    assertThat(chain.massPerLength()).isCloseTo(mass, fourDigits(mass));
  }

  @Test
  void the_standard_series_follows_its_rule_and_the_light_chain_does_not() {
    // ASME B29.1, from memory: 12 500 p² lbf, p in inches, for the standard series.
    for (RollerChain chain : RollerChain.values()) {
      double pitchInInches = chain.pitch() / INCH;
      double rule = 12_500 * pitchInInches * pitchInInches * POUND_FORCE;
      switch (chain) {
        case NO_35, NO_40, NO_50, NO_60 ->
            assertThat(chain.minimumUltimateStrength()).isCloseTo(rule, within(rule * 0.002));
        case NO_41 -> assertThat(chain.minimumUltimateStrength()).isLessThan(rule / 2);
        default -> assertThat(chain.number()).endsWith("B");
      }
    }
    assertThat(RollerChain.numbered("43")).isEmpty();
  }

  // Complete Guide to Chain, 7.1.2.2, fig. 7.7.
  @ParameterizedTest
  @CsvSource({"0.3, 1", "1, 1", "2.5, 2.5", "10, 10", "14, 10"})
  void alignment_follows_the_centre_distance(double metres, double millimetres) {
    assertThat(SprocketAlignment.permissibleOffset(metres) * 1000)
        .isCloseTo(millimetres, within(1e-9));
  }

  // Worked by hand from w (a + s), N: mass kg/m, span, sag, greatest tension.
  @ParameterizedTest
  @CsvSource({
    "0.61, 5, 0.10, 187.6",
    "0.61, 5, 0.20, 94.86",
    "1.01, 6, 0.15, 298.9",
    "0.61, 4, 0.80, 20.48",
  })
  void the_brackets_hold_more_than_the_middle(
      double mass, double span, double sag, double newtons) {
    assertThat(ChainSag.catenaryGreatestTension(mass * 9.80665, span, sag))
        .isCloseTo(newtons, fourDigits(newtons));
  }

  // The take-ups worked by hand above, of 1/2 in chain: mm, pitches that come out, mm for the
  // bolts.
  @ParameterizedTest
  @CsvSource({
    "16.00, 0, 16.00",
    "25.40, 2, 0",
    "28.00, 2, 2.60",
    "33.60, 2, 8.20",
    "50.80, 4, 0",
    "76.00, 4, 25.20",
    "0, 0, 0",
  })
  void links_come_out_in_pairs(double millimetres, int pitches, double bolts) {
    ChainShortening shortening = ChainShortening.of(millimetres / 1000, 0.0127);

    assertThat(shortening.pitches()).isEqualTo(pitches);
    assertThat(shortening.byBolts() * 1000).isCloseTo(bolts, within(1e-9));
  }

  // Worked by hand: the smallest sag that frees two pitches of 1/2 in on 4, 5 and 6 m, and one on
  // 5.
  @ParameterizedTest
  @CsvSource({"4, 2, 195.2", "5, 2, 218.2", "6, 2, 239.1", "5, 1, 154.3"})
  void a_tight_chain_gives_no_links(double span, int pitches, double millimetres) {
    assertThat(1000 * ChainShortening.leastSag(span, pitches, 0.0127))
        .isCloseTo(millimetres, fourDigits(millimetres));
  }

  @Test
  void working_load_stands_against_the_minimum_strength() {
    // ASME B29.1: 3125 lbf for No. 40; at 450 lbf that is 6.944, just short of 7.
    double strength = RollerChain.NO_40.minimumUltimateStrength();

    assertThat(ChainLoad.factor(strength, 450 * POUND_FORCE)).isCloseTo(6.944, within(5e-4));
    assertThat(ChainLoad.allowed(strength, ChainLoad.Joint.RIVETED) / POUND_FORCE)
        .isCloseTo(446.4, within(0.05));
  }

  // Complete Guide to Chain, 1.1.1 and table 2.1: up to 20 % and 35 % off.
  @ParameterizedTest
  @CsvSource({"RIVETED, 0", "CONNECTING_LINK, 20", "OFFSET_LINK, 35"})
  void a_joint_takes_its_share(ChainLoad.Joint joint, double percentOff) {
    double whole = ChainLoad.allowed(10_000, ChainLoad.Joint.RIVETED);

    assertThat(100 * (1 - ChainLoad.allowed(10_000, joint) / whole))
        .isCloseTo(percentOff, within(1e-9));
  }

  @Test
  void the_usual_factor_stays_below_what_catalogues_allow() {
    // Maximum allowable loads of a chain catalogue, lbf, from memory: 35, 41, 40, 50, 60.
    int[] allowable = {480, 500, 810, 1430, 1980};
    RollerChain[] chains = {
      RollerChain.NO_35, RollerChain.NO_41, RollerChain.NO_40, RollerChain.NO_50, RollerChain.NO_60
    };
    for (int i = 0; i < chains.length; i++) {
      assertThat(
              ChainLoad.allowed(chains[i].minimumUltimateStrength(), ChainLoad.Joint.RIVETED)
                  / POUND_FORCE)
          .isLessThan(allowable[i]);
    }
  }

  @Test
  void shafts_may_lean_a_three_hundredth() {
    // Complete Guide to Chain, 7.1.2.2: 1/300. Geometry: 1 in 57.29 is one degree.
    assertThat(SprocketAlignment.permissibleLean(0.3)).isCloseTo(0.001, within(1e-12));
    assertThat(SprocketAlignment.chainAngle(1, 57.29)).isCloseTo(1, within(1e-5));
  }

  @Test
  void impossible_arguments_are_named_with_their_value() {
    assertThatThrownBy(() -> ChainSag.tension(5.982, 5, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("sag must be more than 0, not 0.0");
    assertThatThrownBy(() -> ChainSag.length(Double.NaN, 0.1))
        .hasMessage("span must be more than 0, not NaN");
    assertThatThrownBy(() -> ChainElongation.percent(0.3, 0, 0.0127))
        .hasMessage("pitches must be more than 0, not 0.0");
    assertThatThrownBy(() -> SprocketAlignment.permissibleOffset(-1))
        .hasMessage("centre distance must be more than 0, not -1.0");
  }
}
