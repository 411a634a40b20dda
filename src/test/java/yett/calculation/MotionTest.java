package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MotionTest {
  private static Offset<Double> fourDigits(double expected) {
    return within(Math.abs(expected) * 5e-4);
  }

  // Worked by hand from m g (c cos a + sin a): kg, c, grade, N. The last is 2 degrees.
  @ParameterizedTest
  @CsvSource({
    "400, 0.02, 0, 78.45",
    "400, 0.02, 0.01, 117.7",
    "400, 0.02, -0.03, -39.21",
    "800, 0.015, 0.02, 274.5",
    "300, 0.005, 0.005, 29.42",
    "400, 0.01, 0.01, 78.45",
    "600, 0.03, 0.03492077, 381.8",
  })
  void a_leaf_needs_force_to_roll(double mass, double c, double grade, double newtons) {
    assertThat(Leaf.rollingForce(mass, c, grade)).isCloseTo(newtons, fourDigits(newtons));
  }

  @Test
  void a_leaf_on_its_self_moving_grade_is_on_the_edge() {
    // Worked by hand: 400 kg, c 0.01, 1 % down needs 0 N.
    assertThat(Leaf.rollingForce(400, 0.01, -Leaf.selfMovingGrade(0.01)))
        .isCloseTo(0, within(1e-9));
  }

  // Worked by hand from F v/(η V): N, m/s, efficiency, V, A.
  @ParameterizedTest
  @CsvSource({
    "78.45, 0.2, 0.5, 24, 1.308",
    "300, 0.3, 0.55, 24, 6.818",
    "200, 0.3, 0.5, 24, 5.000",
    "200, 0.3, 0.5, 22, 5.455",
    "450, 0.2, 0.4, 24, 9.375",
  })
  void force_and_speed_tell_the_current(
      double force, double speed, double efficiency, double voltage, double amperes) {
    assertThat(Leaf.motorCurrent(force, speed, efficiency, voltage))
        .isCloseTo(amperes, fourDigits(amperes));
  }

  // Worked by hand from m v²/2; 1 ft/s is 0.3048 m/s.
  @ParameterizedTest
  @CsvSource({
    "400, 0.2, 8.000",
    "600, 0.3, 27.00",
    "800, 0.25, 25.00",
    "1000, 0.3048, 46.45",
    "400, 0.3, 18.00",
    "400, 0.3048, 18.58",
  })
  void a_moving_leaf_carries_energy(double mass, double speed, double joules) {
    assertThat(Leaf.kineticEnergy(mass, speed)).isCloseTo(joules, fourDigits(joules));
  }

  // Worked by hand from uniform acceleration: m, m/s, m/s², m/s², s; the last never gets to speed.
  @ParameterizedTest
  @CsvSource({
    "6, 0.3, 0.3, 0.15, 21.50",
    "4, 0.2, 0.1, 0.1, 22.00",
    "5, 0.25, 0.25, 0.25, 21.00",
    "0.3, 0.3, 0.1, 0.1, 3.464",
  })
  void an_opening_takes_its_time(
      double distance, double speed, double up, double down, double seconds) {
    assertThat(Travel.time(distance, speed, up, down)).isCloseTo(seconds, fourDigits(seconds));
  }

  @Test
  void a_slow_end_makes_the_opening_longer() {
    // Worked by hand: 6 m at 0.3 m/s, 0.3 m/s² both ways, the last 0.3 m at 0.1 m/s.
    assertThat(new TravelProfile(6, 0.3, 0.3, 0.3, 0, 0.3, 0.1).time())
        .isCloseTo(22.72, within(0.005));
    assertThatThrownBy(() -> new TravelProfile(0.5, 0.3, 0.3, 0.3, 0, 0.3, 0.1).time())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("distance at full speed must not be negative");
    assertThatThrownBy(() -> new TravelProfile(6, 0.3, 0.3, 0.3, 0, 0.3, 0.3))
        .hasMessage("speed above slow speed must be more than 0, not 0.0");
  }

  @Test
  void a_run_without_slow_zones_is_the_plain_run() {
    assertThat(new TravelProfile(6, 0.3, 0.3, 0.15, 0, 0, 0).time()).isCloseTo(21.5, within(1e-9));
  }

  @Test
  void a_run_agrees_with_small_steps_of_time() {
    // Independent of the formula: Euler steps of 0.1 ms through 5 m with both ends slow.
    double step = 1e-4;
    double speed = 0;
    double way = 0;
    double time = 0;
    while (way < 5) {
      double brakeFrom = 5 - 0.4 - (0.25 * 0.25 - 0.1 * 0.1) / (2 * 0.2);
      double wanted = way < 0.5 || way >= brakeFrom ? 0.1 : 0.25;
      speed =
          speed < wanted
              ? Math.min(wanted, speed + 0.3 * step)
              : Math.max(wanted, speed - 0.2 * step);
      way += speed * step;
      time += step;
    }

    assertThat(new TravelProfile(5, 0.25, 0.3, 0.2, 0.5, 0.4, 0.1).time())
        .isCloseTo(time, within(0.005));
  }

  @Test
  void a_leaf_that_is_worn_or_dirty_shows_as_resistance() {
    // The inverse of the worked force: 600 kg, 2 degrees, 381.8 N is c 0.03.
    assertThat(Leaf.rollingResistance(600, 381.8, 0.03492077)).isCloseTo(0.03, within(2e-5));
    assertThat(Leaf.rollingResistance(400, 20, 0.02)).isNegative();
  }

  // Worked by hand from N p, chain numbers of ASME B29.1: mm.
  @ParameterizedTest
  @CsvSource({"40, 12, 152.4", "41, 10, 127.0", "50, 15, 238.125"})
  void a_turn_of_the_sprocket_moves_the_chain(String number, int teeth, double millimetres) {
    double pitch = RollerChain.numbered(number).orElseThrow().pitch();

    assertThat(Travel.perTurn(teeth, pitch) * 1000).isCloseTo(millimetres, within(1e-9));
  }

  @Test
  void removed_links_shift_the_limits() {
    // Geometry: two links of 12.7 mm are 25.4 mm.
    assertThat(Travel.limitShift(2, 0.0127)).isCloseTo(0.0254, within(1e-12));
  }

  @Test
  void impossible_arguments_are_named_with_their_value() {
    assertThatThrownBy(() -> Leaf.motorCurrent(100, 0.2, 1.2, 24))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("efficiency must be from 0.0 to 1.0, not 1.2");
    assertThatThrownBy(() -> Leaf.motorCurrent(100, 0.2, 0, 24))
        .hasMessage("efficiency must be more than 0, not 0.0");
    assertThatThrownBy(() -> Leaf.rollingForce(0, 0.02, 0))
        .hasMessage("mass must be more than 0, not 0.0");
  }

  // Worked by hand from (2/D)(μ d/2 + f) + e with the table's coefficients in inches: wheel, axle,
  // tread, bearing, c. The second and third are forces of 13.63 lbf and 43.63 lbf on 1000 lb.
  @ParameterizedTest
  @CsvSource({
    "4, 0.75, STEEL_ON_STEEL, ROLLING, 0.01394",
    "4, 0.5, STEEL_ON_STEEL, ROLLING, 0.01363",
    "4, 0.5, POLYMER_ON_STEEL, ROLLING, 0.04363",
    "6, 0.5, STEEL_ON_STEEL, ROLLING, 0.01008",
    "4, 0.75, STEEL_ON_STEEL, PLAIN, 0.03188",
  })
  void wheels_tell_the_rolling_resistance(
      double wheel,
      double axle,
      WheelResistance.Tread tread,
      WheelResistance.Bearing bearing,
      double c) {
    assertThat(WheelResistance.coefficient(wheel * 0.0254, axle * 0.0254, tread, bearing))
        .isCloseTo(c, fourDigits(c));
  }

  @Test
  void a_steel_wheel_rolls_on_half_a_millimetre_as_in_crane_practice() {
    // DIN 15070 and crane handbooks, from memory: f = 0.5 mm for a steel wheel on a steel rail.
    assertThat(WheelResistance.Tread.STEEL_ON_STEEL.leverArm()).isCloseTo(0.0005, within(1e-5));
    assertThatThrownBy(
            () ->
                WheelResistance.coefficient(
                    0.05,
                    0.05,
                    WheelResistance.Tread.STEEL_ON_STEEL,
                    WheelResistance.Bearing.PLAIN))
        .hasMessageStartingWith("wheel diameter beyond the axle must be more than 0");
  }

  // ASCE 7, q = 0.613 V² in Pa and 0.00256 V² in psf: m/s, Pa. The last is 50 mph, 6.400 psf.
  @ParameterizedTest
  @CsvSource({"10, 61.30", "20, 245.2", "25, 383.1", "30, 551.7", "40, 980.8", "22.352, 306.4"})
  void wind_presses(double speed, double pascals) {
    assertThat(Wind.pressure(speed)).isCloseTo(pascals, fourDigits(pascals));
  }

  // Worked from ASCE 7-16 table 29.4-2 and its gust factor 0.85 for a panel of 6 m by 1.8 m: m/s,
  // solidity, N.
  @ParameterizedTest
  @CsvSource({"20, 1, 2926", "20, 0.20, 810.3", "10, 0.20, 202.6"})
  void wind_pushes_across_the_leaf(double speed, double solidity, double newtons) {
    assertThat(0.85 * Wind.force(speed, 6 * 1.8, solidity)).isCloseTo(newtons, fourDigits(newtons));
  }

  @Test
  void the_drive_feels_the_friction_of_the_guides() {
    // Worked by hand: 2648 N on guides of 0.25.
    assertThat(Wind.addedDriveForce(2648, 0.25)).isCloseTo(662.0, within(0.05));
    assertThat(Wind.coefficient(0.05)).isEqualTo(2.0);
    assertThat(Wind.coefficient(0.3)).isEqualTo(1.6);
    assertThatThrownBy(() -> Wind.coefficient(1.2))
        .hasMessage("solidity must be from 0.0 to 1.0, not 1.2");
  }

  // Worked by hand from v t + m v²/(2 F): kg, m/s, N, s, mm, and the time t + m v/F.
  @ParameterizedTest
  @CsvSource({
    "400, 0.2, 100, 0, 80.00, 0.8000",
    "400, 0.2, 100, 0.1, 100.0, 0.9000",
    "400, 0.2, 78.45, 0, 102.0, 1.020",
    "600, 0.3, 250, 0, 108.0, 0.7200",
    "600, 0.3, 250, 0.1, 138.0, 0.8200",
    "800, 0.3, 117.7, 0.1, 335.9, 2.139",
    "400, 0.3, 339.23, 0.05, 68.06, 0.4037",
  })
  void a_leaf_takes_room_to_stop(
      double mass, double speed, double force, double delay, double millimetres, double seconds) {
    assertThat(1000 * Stopping.distance(mass, speed, force, delay))
        .isCloseTo(millimetres, fourDigits(millimetres));
    assertThat(Stopping.time(mass, speed, force, delay)).isCloseTo(seconds, fourDigits(seconds));
  }

  @Test
  void what_stops_a_leaf_feels_it() {
    // Worked by hand from E/x and v √(k m): 8 J over 20 mm; 500 N/mm and a soft edge of 50 N/mm.
    assertThat(Stopping.meanForce(400, 0.2, 0.020)).isCloseTo(400.0, within(0.05));
    assertThat(Stopping.meanForce(600, 0.3, 0.050)).isCloseTo(540.0, within(0.05));
    assertThat(Stopping.peakForce(400, 0.1, 500_000)).isCloseTo(1414, within(0.5));
    assertThat(Stopping.peakForce(400, 0.2, 50_000)).isCloseTo(894.4, within(0.05));
    assertThat(Stopping.peakForce(400, 0.2, 10_000)).isCloseTo(400.0, within(0.05));
  }

  @Test
  void a_released_leaf_runs_down_a_grade() {
    // The worked force of 39.21 N on 400 kg at c 0.02 and 3 % down, and v = √(2 a s), t = √(2 s/a).
    double acceleration = 39.21 / 400;

    assertThat(ReleasedLeaf.acceleration(0.02, 0.03))
        .isCloseTo(acceleration, fourDigits(acceleration));
    assertThat(ReleasedLeaf.acceleration(0.02, -0.03))
        .isEqualTo(ReleasedLeaf.acceleration(0.02, 0.03));
    assertThat(ReleasedLeaf.speedAfter(5, 0.02, 0.03)).isCloseTo(0.9901, within(5e-4));
    assertThat(ReleasedLeaf.timeFor(5, 0.02, 0.03)).isCloseTo(10.10, within(0.005));
    assertThat(ReleasedLeaf.holdingForce(400, 0.02, 0.03)).isCloseTo(39.21, within(0.005));
  }

  @Test
  void a_frictionless_slope_is_the_textbook_one() {
    // a = g sin 30° = g/2; what falls 1 m has √(2 g) m/s whatever the slope.
    double grade = Math.tan(Math.toRadians(30));

    assertThat(ReleasedLeaf.acceleration(0, grade)).isCloseTo(9.80665 / 2, within(1e-9));
    assertThat(ReleasedLeaf.speedAfter(2, 0, grade)).isCloseTo(4.4287, within(5e-5));
  }

  @Test
  void a_leaf_stays_put_below_its_resistance() {
    assertThat(ReleasedLeaf.acceleration(0.02, 0.0199)).isZero();
    assertThat(ReleasedLeaf.speedAfter(5, 0.02, 0.01)).isZero();
    assertThat(ReleasedLeaf.timeFor(5, 0.02, 0.01)).isInfinite();
    assertThat(ReleasedLeaf.acceleration(0.02, 0.0201)).isPositive();
  }
}
