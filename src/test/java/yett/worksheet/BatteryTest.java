package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.calculation.BatteryCapacity;

class BatteryTest {

  @Test
  void charge_from_the_voltage_at_rest() {
    // AGM chart of a vehicle manual, between its rows: 12.45 V 62.5 %, 12.70 V 87.5 %.
    Worked.out("battery-charge", "rest-voltage=12.45 V")
        .gives("charge", 62.5)
        .says("between", "50 % and 75 %".replace(' ', '\u00a0').replace("\u00a0and\u00a0", " and "))
        .means("Only about 62.5 % is left");
    Worked.out("battery-charge", "rest-voltage=25.4 V", "across=pair")
        .gives("block-voltage", 12.70)
        .gives("charge", 87.5)
        .means("Charged well enough");
    // A meter of 0.5 % + 2 x 0.01 V at 12.62 V, worked by hand: limits 0.0831 V, u 0.04798 V, on a
    // slope of 25 % in 0.2 V 5.997 %.
    Worked.out("battery-charge", "rest-voltage=12.70 V +- 0.0831 V").isUncertainBy("charge", 5.997);
  }

  // AGM chart: full blocks rest at 12.8 V to 13.2 V.
  @Test
  void a_voltage_that_is_no_rest_tells_no_charge() {
    Worked.out("battery-charge", "rest-voltage=13.2 V").gives("charge", 100);
    Worked.out("battery-charge", "rest-voltage=13.3 V")
        .doesNotTell("charge")
        .doesNotTell("between")
        .means("13.3 V a block is not a rest voltage");
    Worked.out("battery-charge", "rest-voltage=13.5 V", "rest=10 min").gives("charge", 100);
    Worked.out("battery-charge", "rest-voltage=13.7 V", "rest=10 min").doesNotTell("charge");
    Worked.out("battery-charge", "rest-voltage=12.8 V", "kind=flooded").doesNotTell("charge");
  }

  @Test
  void flat_and_cold_may_be_frozen() {
    Worked flat =
        Worked.out("battery-charge", "rest-voltage=11.4 V", "battery-temperature=-15 degC")
            .doesNotTell("charge")
            .means("flat");
    assertThat(flat.solution().meaning().notes())
        .anyMatch(n -> n.text().startsWith("A flat battery freezes."));
    assertThatThrownBy(() -> Worked.out("battery-charge", "rest-voltage=25 V"))
        .hasMessageContaining("maybe across=pair");
  }

  @Test
  void internal_resistance() {
    // Worked by hand: 12.62 V at 0.4 A and 12.10 V at 10.4 A, 52.00 mohm; a pair 25.40 V and 24.20
    // V
    // at 20 A, 60.00 mohm. u with a meter of 0.5 % + 2 x 0.01 V and a clamp of 2 % + 5 x 0.1 A, all
    // taken as independent: 7.174 mohm.
    Worked.out(
            "battery-resistance",
            "voltage=12.62 V +- 0.0831 V",
            "current=0.4 A +- 0.508 A",
            "loaded-voltage=12.10 V +- 0.0805 V",
            "loaded-current=10.4 A +- 0.708 A",
            "across=block")
        .gives("resistance", 52.00)
        .isUncertainBy("resistance", 7.174)
        .doesNotTell("usual");
    Worked.out(
            "battery-resistance",
            "voltage=25.40 V",
            "loaded-voltage=24.20 V",
            "loaded-current=20 A",
            "baseline=45 mohm")
        .gives("resistance", 60.00)
        .gives("rise", 33.33)
        .gives("fall", 1.2)
        .means("over its baseline");
    // Short circuit of 24 V behind 20 mohm, 1200 A, worked by hand.
    Worked.out("battery-resistance", "voltage=24 V", "loaded-voltage=23.6 V", "loaded-current=20 A")
        .gives("short-circuit", 1200)
        .means("give their capacity before you call it good");
    assertThatThrownBy(
            () ->
                Worked.out(
                    "battery-resistance",
                    "voltage=24 V",
                    "loaded-voltage=24.6 V",
                    "loaded-current=20 A"))
        .hasMessageContaining("maybe the two readings are swapped");
  }

  // Data sheet: a sound block of 40 Ah has under 8 mohm; twice that and 10 mohm of cables for a
  // pair.
  @ParameterizedTest
  @CsvSource({
    "pair, 40 Ah, 25.88, 26, As low as it ought to be for blocks of 40 Ah",
    "pair, 40 Ah, 25.40, 26, A little more than is usual",
    "pair, 40 Ah, 24.94, 26, More than sound blocks of 40 Ah",
    "pair, 7 Ah, 24.94, 60, As low as it ought to be for blocks of 7 Ah",
    "block, 40 Ah, 25.86, 8, As low as it ought to be",
    "block, 40 Ah, 25.80, 8, More than sound",
  })
  void resistance_goes_with_capacity(
      String across, String capacity, double loaded, double usual, String meaning) {
    Worked.out(
            "battery-resistance",
            "voltage=26 V",
            "loaded-voltage=" + loaded + " V",
            "loaded-current=20 A",
            "capacity=" + capacity,
            "across=" + across)
        .gives("usual", usual)
        .means(meaning);
  }

  // Load-test table of vehicle service information: half of CCA 400 is 200 A, 9.3 V at 4 degC; 115
  // A
  // of CCA 230, 9.4 V at 10 degC; 275 A of CCA 550, 9.6 V at 20 degC.
  @ParameterizedTest
  @CsvSource({
    "400, 4, 9.3, 200, 9.3, passes",
    "230, 10, 9.3, 115, 9.4, fails",
    "550, 20, 9.7, 275, 9.6, passes",
    "400, -18, 8.4, 200, 8.5, fails",
  })
  void load_test(
      double cca, double temperature, double volts, double load, double lowest, String verdict) {
    Worked.out(
            "battery-load-test",
            "cranking-current=" + cca + " A",
            "loaded-voltage=" + volts + " V",
            "battery-temperature=" + temperature + " degC")
        .gives("right-load", load)
        .gives("lowest", lowest)
        .says("verdict", verdict);
  }

  @Test
  void a_load_test_that_tells_nothing() {
    Worked.out(
            "battery-load-test",
            "cranking-current=400 A",
            "loaded-voltage=9.0 V",
            "rest-voltage=12.2 V")
        .says("verdict", "none: charge it first")
        .means("charge it and test again");
    Worked.out("battery-load-test", "cranking-current=400 A", "loaded-voltage=10 V", "load=100 A")
        .says("verdict", "none: the load was too small")
        .means("says nothing; test again");
    Worked.out("battery-load-test", "cranking-current=400 A", "loaded-voltage=9 V", "load=300 A")
        .says("verdict", "none: the load was too large")
        .means("test again with the right load");
    Worked.out("battery-load-test", "cranking-current=400 A", "loaded-voltage=12.6 V")
        .says("verdict", "none: it was not loaded")
        .means("what a block has without a load");
    Worked.out(
            "battery-load-test",
            "cranking-current=400 A",
            "loaded-voltage=12.4 V",
            "rest-voltage=12.7 V")
        .says("verdict", "none: it was not loaded");
    Worked.out("battery-load-test", "cranking-current=400 A", "loaded-voltage=9.7 V +- 0.2 V")
        .means("smaller than the uncertainty of the readings");
  }

  @Test
  void capacity_left() {
    // Worked by hand after the correction of discharge tests: 5.0 Ah at 10 degC from 7 Ah over 20
    // h,
    // k 0.006: 5.495 Ah, 78.49 %; 28 Ah of 35 at 25 degC 80 %.
    Worked.out("battery-capacity", "capacity=7 Ah", "drawn=5 Ah", "battery-temperature=10 degC")
        .gives("capacity-at-25", 5.495)
        .gives("share", 78.49)
        .gives("limit", 5.6)
        .says("verdict", "worn out");
    Worked.out("battery-capacity", "capacity=35 Ah", "drawn=28 Ah")
        .gives("share", 80)
        .says("verdict", "test every year");
  }

  // Peukert with the rated time, worked by hand: Ah, k, A, h, Ah given.
  @ParameterizedTest
  @CsvSource({
    "7, 1.15, 3.5, 1.416, 4.956",
    "7, 1.15, 7, 0.6380, 4.466",
    "18, 1.10, 9, 1.589, 14.30",
    "35, 1.2, 10, 2.470, 24.70",
    "100, 1.15, 20, 4.061, 81.23",
    "100, 1.2, 5, 20, 100",
  })
  void runtime(double capacity, double exponent, double current, double hours, double given) {
    Worked.out(
            "battery-runtime",
            "capacity=" + capacity + " Ah",
            "current=" + current + " A",
            "peukert=" + exponent)
        .gives("runtime", hours)
        .gives("given", given);
  }

  @Test
  void a_small_current_does_not_multiply_the_capacity() {
    // Peukert alone would promise 20 h x (100/20)^1.2 = 138 h at 1 A.
    Worked.out("battery-runtime", "capacity=100 Ah", "current=1 A", "peukert=1.2")
        .gives("runtime", 100);
  }

  // Capacity table of an AGM battery: over 60 min 0 degC -16 %, 5 -12, 10 -10, 15 -6, 20 -1, 30 +3,
  // 40 +5; under 30 min 0 degC -20 %, 10 -12, 40 +10. -10 degC 74 % from a 40 Ah data sheet.
  @ParameterizedTest
  @CsvSource({
    "0, 2, 0.84", "5, 2, 0.88", "10, 2, 0.90", "15, 2, 0.94", "20, 2, 0.99", "25, 2, 1",
    "30, 2, 1.03", "40, 2, 1.05", "0, 0.4, 0.80", "10, 0.4, 0.88", "40, 0.4, 1.10", "-10, 20, 0.74",
    "0, 0.75, 0.82", "-20, 20, 0.64", "-30, 20, 0.54",
  })
  void cold_takes_capacity(double temperature, double hours, double share) {
    assertThat(BatteryCapacity.atTemperature(temperature, hours)).isCloseTo(share, within(1e-9));
  }

  @Test
  void age_takes_capacity() {
    // End of design life is 80 % of the rated capacity (IEEE 450, IEEE 1188); life halves for 10
    // degC
    // more (rule of thumb, from memory).
    assertThat(BatteryCapacity.aged(5, 5, 25)).isCloseTo(0.8, within(1e-12));
    assertThat(BatteryCapacity.aged(2.5, 5, 35)).isCloseTo(0.8, within(1e-12));
    assertThat(BatteryCapacity.aged(5, 5, 10)).isCloseTo(0.8, within(1e-12));
    assertThat(BatteryCapacity.aged(40, 5, 25)).isZero();
    Worked.out("battery-runtime", "capacity=10 Ah", "current=0.4 A", "age=5 yr").gives("left", 80);
    assertThatThrownBy(
            () -> Worked.out("battery-runtime", "capacity=10 Ah", "current=1 A", "age=29 yr"))
        .hasMessageContaining("test them");
  }

  @Test
  void cycles_without_mains() {
    // Worked by hand: 5 A for 30 s are 41.67 mAh, which count (20 x 5/12)^0.15 = 1.374 times; 12 Ah
    // carry 209 of them, as Peukert's 1.746 h at 5 A do; at 4 an hour and 0.15 A standing 31.66 h.
    Worked.out("battery-cycles", "capacity=12 Ah", "motor-current=5 A", "run-time=30 s")
        .gives("cycle", 0.04167)
        .gives("nonstop", 209)
        .gives("hours", 31.66)
        .gives("cycles", 126)
        .gives("standing", 80)
        .means("about 31.7 h, 126 cycles");
    assertThat(20 * Math.pow(12 / 100.0, 1.15) * 3600 / 30).isCloseTo(209.5, within(0.1));
    assertThatThrownBy(
            () ->
                Worked.out(
                    "battery-cycles",
                    "capacity=12 Ah",
                    "motor-current=5 A",
                    "run-time=60 s",
                    "per-hour=70"))
        .hasMessageContaining("do not fit into an hour");
  }

  // Operation manual of a valve-regulated battery, table of float voltages: 27.54 V at 10 degC for
  // twelve cells, 13.32 V at 35 degC for six; boost by its formula 14.10 V at 25 degC.
  @ParameterizedTest
  @CsvSource({"12, 10, 27.54, 29.10", "6, 35, 13.32, 13.80", "6, 25, 13.50, 14.10"})
  void charge_voltage(int cells, double temperature, double floating, double boost) {
    Worked.out("charge-voltage", "cells=" + cells, "battery-temperature=" + temperature + " degC")
        .gives("float-voltage", floating)
        .gives("boost-voltage", boost);
  }

  @Test
  void a_charge_voltage_is_judged() {
    Worked.out("charge-voltage", "battery-temperature=25 degC", "measured=25.8 V")
        .gives("over-float", -1.2)
        .means("25.8 V does not charge");
    Worked hot =
        Worked.out("charge-voltage", "battery-temperature=35 degC", "measured=30.5 V")
            .means("overcharges");
    assertThat(hot.solution().meaning().notes()).hasSize(1);
    // 2.32 V a cell at 25 degC, the highest float of data sheets, less 3 mV a degree: 27.3 V at 40
    // degC.
    String[] warm = {"battery-temperature=40 degC", "measured=28.4 V"};
    Worked.out("charge-voltage", warm)
        .means("too much for a float, which has 27.3 V at most", "stage=");
    Worked.out("charge-voltage", warm[0], warm[1], "stage=float").means("full batteries dry out");
    Worked.out("charge-voltage", warm[0], warm[1], "stage=charge")
        .means("as it ought to be while they still charge");
    Worked.out("charge-voltage", "battery-temperature=25 degC", "measured=27 V")
        .says("over-float", "0 V");
    // The data sheets' ±: float 13.7 to 13.9 V a block, absorption 14.7 V, at 25 degC.
    Worked.out("charge-voltage", "battery-temperature=25 degC", "measured=27.6 V")
        .means("as it ought to be");
  }

  @Test
  void charger_against_a_day_of_cycles() {
    // Worked by hand: 0.8 A for 24 h over 1.1 give 17.45 Ah; 60 cycles of 41.67 mAh and 24 h of
    // 0.15 A
    // take 6.1 Ah; 332 cycles would be carried; 12 Ah refill in 1.1 x 12/0.65 = 20.31 h.
    Worked.out(
            "charger-balance",
            "charger-current=0.8 A",
            "cycles=60",
            "motor-current=5 A",
            "run-time=30 s",
            "capacity=12 Ah")
        .gives("given", 17.45)
        .gives("drawn", 6.1)
        .gives("balance", 11.35)
        .gives("most-cycles", 332)
        .gives("refill", 20.31)
        .means("The charger keeps up");
  }

  @Test
  void the_sun_against_a_day_of_cycles() {
    // Worked by hand: 40 W x 2 h x 0.6 = 48 Wh; 24 V x (30 x 41.67 mAh + 1.2 Ah) = 58.8 Wh; 49 W
    // would do; 19 cycles are carried; 12 Ah x 24 V x 0.8 last 3.918 days.
    Worked.out(
            "solar-balance",
            "panel=40 W",
            "sun-hours=2 h",
            "cycles=30",
            "motor-current=5 A",
            "run-time=30 s",
            "capacity=12 Ah")
        .gives("harvest", 48)
        .gives("need", 58.8)
        .gives("balance", -10.8)
        .gives("least-panel", 49)
        .gives("most-cycles", 19)
        .gives("dark-days", 3.918)
        .means("falls behind by 10.8 Wh", "49 W");
  }
}
