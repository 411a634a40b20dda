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
  void a_creep_makes_the_opening_longer() {
    // Worked by hand: 6 m at 0.3 m/s, 0.3 m/s² both ways, the last 0.3 m at 0.1 m/s.
    assertThat(Travel.timeWithCreep(6, 0.3, 0.3, 0.3, 0.3, 0.1)).isCloseTo(22.72, within(0.005));
    assertThatThrownBy(() -> Travel.timeWithCreep(0.5, 0.3, 0.3, 0.3, 0.3, 0.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("distance at full speed must not be negative");
    assertThatThrownBy(() -> Travel.timeWithCreep(6, 0.3, 0.3, 0.3, 0.3, 0.3))
        .hasMessage("speed above creep speed must be more than 0, not 0.0");
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
}
