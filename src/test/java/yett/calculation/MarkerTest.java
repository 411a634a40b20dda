package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand along a drawing: the far bracket 5.2 m from the first idler, a way of 5 m. */
class MarkerTest {
  private static final double RUN = 5.2;
  private static final double WHEELS = 0.3;
  private static final double OPENING = 5;

  private static Marker at(double fromBracket) {
    return new Marker(RUN, fromBracket, WHEELS, OPENING);
  }

  @Test
  void a_marker_in_mid_run_passes_over_the_wheels() {
    Marker marker = at(2.7);

    assertThat(marker.whenClosed()).isCloseTo(-2.5, within(1e-12));
    assertThat(marker.whenOpen()).isCloseTo(2.5, within(1e-12));
    // The sensor half-way between the idlers: 2.5 m to the first idler and 0.15 m more.
    assertThat(marker.openAt(0.15).orElseThrow()).isCloseTo(2.65, within(1e-12));
    Range onWheels = marker.onWheels().orElseThrow();
    assertThat(onWheels.low()).isCloseTo(2.5, within(1e-12));
    assertThat(onWheels.high()).isCloseTo(2.8, within(1e-12));
    assertThat(marker.clearance()).isZero();
    assertThat(marker.clearanceClosed()).isCloseTo(2.5, within(1e-12));
    assertThat(marker.clearanceOpen()).isCloseTo(2.2, within(1e-12));
  }

  @Test
  void a_marker_beside_the_far_bracket_never_reaches_the_wheels() {
    Marker marker = at(0.05);

    assertThat(marker.onWheels()).isEmpty();
    assertThat(marker.clearance()).isCloseTo(0.15, within(1e-12));
    assertThat(marker.openAt(0)).isEmpty();
    // A sensor 0.2 m before the idler sees it just before the end: 5.15 m less 0.2 m.
    assertThat(marker.openAt(-0.2).orElseThrow()).isCloseTo(4.95, within(1e-12));
  }

  @Test
  void a_marker_behind_the_wheels_stays_there() {
    Marker marker = at(5.7);

    assertThat(marker.whenClosed()).isCloseTo(0.5, within(1e-12));
    assertThat(marker.onWheels()).isEmpty();
    assertThat(marker.clearance()).isCloseTo(0.2, within(1e-12));
    assertThat(marker.openAt(0.15)).isEmpty();
  }

  @Test
  void a_marker_may_rest_on_the_wheels_at_an_end() {
    assertThat(at(5.3).clearanceClosed()).isZero();
    assertThat(at(5.3).onWheels().orElseThrow().high()).isCloseTo(0.2, within(1e-12));
    assertThat(at(0.3).clearanceOpen()).isZero();
  }

  // Worked by hand: opening, marker, towards open first, position, way; and the longest way.
  @ParameterizedTest
  @CsvSource({
    "6, 3, true, 0, 3, 6",
    "6, 3, true, 4, 5, 6", // 2 m to the end, 3 m back
    "6, 3, true, 3, 0, 6",
    "6, 3, false, 5, 2, 6",
    "6, 1, true, 0, 1, 10", // just beyond the marker: 5 m there and 5 m back
    "6, 5, true, 0, 5, 5",
    "6, 1, false, 0.5, 1.5, 5", // 0.5 m to closed, 1 m back
    "6, 0, false, 6, 6, 6",
  })
  void a_search_goes_one_way_and_back(
      double opening, double marker, boolean opens, double position, double way, double longest) {
    MarkerSearch search = new MarkerSearch(opening, marker, opens);

    assertThat(search.from(position)).isCloseTo(way, within(1e-12));
    assertThat(search.longest()).isCloseTo(longest, within(1e-12));
  }

  @Test
  void no_place_needs_more_than_the_longest_search() {
    for (double marker = 0; marker <= 6; marker += 0.25) {
      for (boolean opens : new boolean[] {true, false}) {
        MarkerSearch search = new MarkerSearch(6, marker, opens);
        double longest = 0;
        for (int step = 0; step <= 6000; step++) {
          longest = Math.max(longest, search.from(step / 1000.0));
        }
        assertThat(longest).isCloseTo(search.longest(), within(0.002));
      }
    }
  }

  // ASME B29.1 pitches, worked by hand from n N p/i: No. 40, 12 teeth, 30 to 1 moves 5.08 mm a
  // turn.
  @Test
  void turns_of_the_motor_move_the_chain() {
    MotorTurns turns = new MotorTurns(30, 12, 0.0127);

    assertThat(turns.perTurn()).isCloseTo(0.00508, within(1e-12));
    assertThat(turns.travel(1000)).isCloseTo(5.08, within(1e-9));
    assertThat(turns.turns(5.08)).isCloseTo(1000, within(1e-9));
    assertThat(turns.speed(3000)).isCloseTo(0.254, within(1e-12));
  }

  // Worked by hand from 1 - cos(π/N), as chain handbooks tabulate it: teeth, percent.
  @ParameterizedTest
  @CsvSource({"12, 3.407", "10, 4.894", "15, 2.185"})
  void few_teeth_make_the_chain_run_unevenly(int teeth, double percent) {
    assertThat(100 * new MotorTurns(30, teeth, 0.0127).speedRipple())
        .isCloseTo(percent, within(5e-4));
  }

  @Test
  void impossible_places_are_refused() {
    assertThatThrownBy(() -> new MarkerSearch(6, 7, true))
        .hasMessage("place of the marker must be from 0.0 to 6.0, not 7.0");
    assertThatThrownBy(() -> new MarkerSearch(6, 3, true).from(-1))
        .hasMessageStartingWith("position of the leaf must be from 0.0 to 6.0");
    assertThatThrownBy(() -> new Marker(0, 1, 0.3, 5)).hasMessageStartingWith("run must be");
    assertThatThrownBy(() -> new MotorTurns(0, 12, 0.0127))
        .hasMessage("gear ratio must be more than 0, not 0.0");
  }
}
