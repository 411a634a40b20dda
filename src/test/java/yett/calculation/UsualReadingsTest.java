package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What is usual on a gate, worked by hand from the figures that each formula names. */
class UsualReadingsTest {
  private static final Offset<Double> EXACT = within(1e-9);

  private static void assertRange(Range range, double low, double high) {
    assertThat(range.low()).isCloseTo(low, EXACT);
    assertThat(range.high()).isCloseTo(high, EXACT);
  }

  @Test
  void a_pair_under_load_dips_lower_in_the_cold() {
    assertRange(PairOfBatteries.running(15), 25.4 - 20 * 0.095, 26);
    assertRange(PairOfBatteries.running(30), 23.5, 26);
    assertRange(PairOfBatteries.running(-10), 23.0, 26); // 25 degrees colder, 20 mV each
  }

  @Test
  void a_pair_falls_through_its_resistance_and_at_least_by_what_can_be_read() {
    assertRange(PairOfBatteries.fall(20, 20), 0, 1.2); // 60 mohm
    assertRange(PairOfBatteries.fall(20, 5), 0, 1.32); // 1 % more for each of ten degrees
    assertRange(PairOfBatteries.fall(5, 20), 0, 0.6);
  }

  @Test
  void what_batteries_have_and_last() {
    assertThat(PairOfBatteries.highestAtRest(LeadAcid.Build.AGM)).isCloseTo(26.4, EXACT);
    assertThat(PairOfBatteries.highestAtRest(LeadAcid.Build.FLOODED)).isCloseTo(25.5, EXACT);
    assertRange(PairOfBatteries.atController(new Range(25.2, 27.2)), 24.9, 27.2);
    assertRange(PairOfBatteries.warmth(20), 15, 30);
    assertThat(BatteryCapacity.standing(35, 0.35)).isCloseTo(80, EXACT); // four fifths of 100 h
    assertThatThrownBy(() -> BatteryCapacity.standing(35, 0)).hasMessageContaining("current");
  }

  @Test
  void what_a_panel_gives() {
    assertThat(SolarPanel.current(68)).isCloseTo(2, EXACT);
    assertRange(SolarPanel.shortCircuit(68), 1, 2.3);
    // 100 W x 2 h x 0.7 = 140 Wh; 24 V x (100 cycles x 5 A x 40 s/3600 + 24 h x 0.04 A) = 156.37 Wh
    assertThat(SolarPanel.coveredOnADarkDay(100, 100, 5, 20)).isCloseTo(0.8953, within(5e-5));
  }

  @Test
  void what_a_feeder_has_and_loses() {
    // 3.14 ohm per 1000 ft at 75 degC, 150 ft there and back
    Conductor awg14 = Conductor.AWG_STRANDED.get(2);
    assertThat(awg14.loop(45.72, 75)).isCloseTo(0.942, within(1e-9));
    assertThat(awg14.drop(4, 45.72, 75)).isCloseTo(4 * awg14.loop(45.72, 75), EXACT);
    assertRange(Conductor.usualDrop(2, 120), 0, 2);
    assertRange(Conductor.usualDrop(0.3, 120), 0, 1.2);
    assertRange(Conductor.usualDrop(9, 120), 0, 3.6);
  }

  @Test
  void three_tenths_of_what_trips_may_leak() {
    assertRange(ResidualCurrent.usual(230), 0, 0.009);
    assertRange(ResidualCurrent.usual(120), 0, 0.0018);
  }

  @Test
  void a_third_to_one_and_a_half_of_what_is_fitted_is_usual() {
    assertRange(AccessoryLoad.usual(0.6), 0.2, 0.9);
    assertRange(AccessoryLoad.usual(0.06), 0.02, 0.2);
  }

  @Test
  void how_a_leaf_runs_and_hangs() {
    // 0.3 m/s: 30 mm and 0.09/3 m; 90 mm and 0.09/1 m
    assertRange(Stopping.usualCoasting(0.3), 0.06, 0.18);
    assertRange(Travel.usualSpeed(0.25), 0.22, 0.28);
    assertThat(Leaf.usualBow(6)).isCloseTo(0.02, EXACT);
    assertThat(Leaf.usualNoseDrop(6)).isCloseTo(0.03, EXACT);
    assertRange(new Range(0.06, 0.18).times(1000), 60, 180);
  }
}
