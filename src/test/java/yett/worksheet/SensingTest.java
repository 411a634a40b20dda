package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.calculation.VehicleLoop;

class SensingTest {
  private static final double FOOT = 0.3048;

  // Grover's rectangle, worked by hand for 6 x 6 ft of 14 AWG, 3.81 mm from turn to turn; beside it
  // the rule (P/4)(N² + N) with P in feet.
  @ParameterizedTest
  @CsvSource({"1, 10.16, 12", "2, 36.12, 36", "3, 75.85, 72", "4, 128.2, 120"})
  void inductance_of_a_loop(int turns, double loop, double quick) {
    Worked.out("loop-inductance", "long-side=6 ft", "short-side=6 ft", "turns=" + turns)
        .gives("loop", loop)
        .gives("quick", quick);
  }

  @Test
  void a_metre_is_not_a_foot() {
    // 40 ft around and 2 turns: 60 uH by the rule, worked by hand.
    assertThat(VehicleLoop.quickInductance(40 * FOOT, 2)).isCloseTo(60, within(1e-9));
  }

  @Test
  void lead_in_resistance_and_sides_of_a_loop() {
    // Worked by hand: 100 ft of lead-in are 22 uH, so 77.5 % of a change are seen; 272 ft of 14 AWG
    // at
    // 20 degC, 2.582 ohm per 1000 ft, have 0.7023 ohm. A 6 ft side sees 4 ft high and stays 4 ft
    // away.
    Worked.out("loop-inductance", "long-side=6 ft", "short-side=6 ft", "turns=3", "lead-in=100 ft")
        .gives("total", 97.85)
        .gives("seen", 77.52)
        .gives("resistance", 0.7023)
        .gives("height", 4 * FOOT)
        .gives("clearance", 4 * FOOT);
    // Published loop guide: two thirds of the shorter leg or 3 ft; 4 x 8 ft sees 32 in high.
    Worked.out("loop-inductance", "long-side=8 ft", "short-side=4 ft", "turns=3")
        .gives("height", 32 * 0.0254)
        .gives("clearance", 3 * FOOT);
    // 300 ft of lead-in on 36 uH: 35 %, worked by hand.
    Worked.out("loop-inductance", "long-side=6 ft", "short-side=6 ft", "turns=2", "lead-in=300 ft")
        .gives("seen", 35.37)
        .means("hides a third");
  }

  // Published road-agency test, Q at 50 kHz at least 5: 94 uH has 29.53 ohm, worked by hand.
  @ParameterizedTest
  @CsvSource({"2.0, 14.77", "6.5, 4.543"})
  void quality_of_a_loop(double ohms, double quality) {
    assertThat(VehicleLoop.quality(94, ohms, 50_000)).isCloseTo(quality, within(quality * 5e-4));
  }

  @Test
  void turns_of_a_loop() {
    // 60 to 100 uH is the window of a road agency (FP-96, section 636); loop trade: 3 turns to 26
    // ft.
    Worked.out("loop-turns", "long-side=6 ft", "short-side=6 ft")
        .means("Lay 3 turns, all")
        .gives("turns", 3)
        .gives("inductance", 75.85)
        .gives("wire", 72 * FOOT)
        .says("rule", "3 turns");
    Worked.out("loop-turns", "long-side=20 ft", "short-side=6 ft").says("rule", "2 turns");
    Worked.out("loop-turns", "long-side=20 m", "short-side=10 m", "wanted=20 uH")
        .means("Lay 1 turn, all");
  }

  // WAC 296-46B-300: 50 Mohm new; common practice: 100 new, 10 and 1 in service.
  @ParameterizedTest
  @CsvSource({
    "120, new, good",
    "60, new, poor for new work",
    "49, new, bad",
    "10, in-service, good",
    "5, in-service, watch it",
    "0.9, in-service, bad",
  })
  void insulation(double megohms, String state, String verdict) {
    Worked.out("insulation", "measured=" + megohms + " Mohm", "state=" + state)
        .says("verdict", verdict);
  }

  @Test
  void new_work_that_reads_too_little_is_not_called_earthed() {
    Worked.out("insulation", "measured=40 Mohm", "state=new")
        .means("40 Mohm is too little for new work, though it would work for now");
    Worked.out("insulation", "measured=60 Mohm", "state=new").means("less than good work reads");
    Worked.out("insulation", "measured=0.5 Mohm").means("a wire that touches earth");
  }

  // Inverse square, worked by hand: rated range, distance, windows, gain.
  @ParameterizedTest
  @CsvSource({"20, 8, 100, 6.25", "20, 10, 100, 4", "12, 9, 100, 1.778", "20, 8, 64, 4"})
  void gain_of_a_beam(double range, double distance, double windows, double gain) {
    Worked.out(
            "beam-margin",
            "range=" + range + " m",
            "distance=" + distance + " m",
            "windows=" + windows + " %")
        .gives("gain", gain);
  }

  @Test
  void margin_of_a_beam() {
    // A gain of 6.25 fails when 16 % of the light is left, worked by hand; 1.5 is published for
    // clean
    // air.
    Worked.out("beam-margin", "range=20 m", "distance=8 m")
        .gives("fails-at", 16)
        .gives("wanted", 5)
        .means("leaves room");
    Worked.out("beam-margin", "range=12 m", "distance=9 m", "air=clean").gives("wanted", 1.5);
    Worked.out("beam-margin", "range=12 m", "distance=9 m", "air=dirty")
        .means("is less than the 10");
    Worked.out("beam-margin", "range=8 m", "distance=9 m")
        .means("9 m is beyond the 8 m", "even clean");
    Worked.out("beam-margin", "range=12 m", "distance=9 m", "windows=50 %")
        .means("clean both windows, then aim again");
    // From memory of sensor handbooks: gain 20 at 10 ft falls to 2.222 at 30 ft.
    assertThat(20 * yett.calculation.PhotoBeam.excessGain(10, 30, 1))
        .isCloseTo(2.222, within(5e-4));
  }

  @Test
  void aim_of_a_beam() {
    // R tan θ, worked by hand: 1 degree at 10 m 174.6 mm; a cone of 3 degrees to a side 1048 mm at
    // 10 m
    // and 628.9 at 6 m; 2 degrees at 6 m 209.5 mm; 50 mm at 6 m are 0.4775 degrees.
    Worked.out("beam-aim", "distance=10 m").gives("per-degree", 174.6).gives("spot", 1048);
    Worked.out("beam-aim", "distance=6 m", "turned=2 deg")
        .gives("spot", 628.9)
        .gives("lands-off", 209.5)
        .means("is on the rim");
    Worked.out("beam-aim", "distance=6 m", "off=50 mm")
        .gives("turn-back", 0.4775)
        .means("well enough");
    Worked.out("beam-aim", "distance=6 m", "off=400 mm").means("misses the receiver");
  }

  @Test
  void an_edge() {
    // 5 % of 8.2 and 10 kohm; two in parallel and in series; worked by hand.
    Worked.out("edge-resistor", "leads=0 ohm")
        .gives("low", 7.790)
        .gives("high", 8.610)
        .gives("two-parallel", 4.1)
        .gives("two-series", 16.4);
    Worked.out("edge-resistor", "resistor=10 kohm", "leads=0 ohm")
        .gives("low", 9.5)
        .gives("high", 10.5);
  }

  @Test
  void an_edge_that_reads_wrong() {
    // 100 kohm of water across 8.2 kohm read 7.579; 20 kohm 5.816; 1 kohm in the wire 9.200; worked
    // by
    // hand.
    Worked.out("edge-resistor", "leads=0 ohm", "measured=7.579 kohm")
        .gives("leak", 100, 0.1)
        .means("Still good, as 5.4 kohm to 9.02 kohm", "leaks across it");
    Worked.out("edge-resistor", "leads=0 ohm", "measured=5.816 kohm")
        .gives("leak", 20, 0.01)
        .means("Still good");
    Worked.out("edge-resistor", "measured=5.3 kohm").means("Water or dirt leaks across it");
    Worked.out("edge-resistor", "leads=0 ohm", "measured=9.2 kohm")
        .gives("extra", 1)
        .means("corroded joint");
    Worked.out("edge-resistor", "measured=8.25 kohm").doesNotTell("leak").means("is right");
    Worked.out("edge-resistor", "measured=4.15 kohm").means("side by side");
    Worked.out("edge-resistor", "measured=16.3 kohm").means("in a row");
    Worked.out("edge-resistor", "measured=3 ohm").means("reads as pressed");
    Worked.out("edge-resistor", "measured=5000 kohm").means("wire is broken");
  }
}
