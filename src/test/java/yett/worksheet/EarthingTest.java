package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.calculation.EarthRod;

class EarthingTest {
  private static final double FOOT = 0.3048;

  @Test
  void the_rod_of_the_military_handbook() {
    // MIL-HDBK-419A, volume II, 1.2.2.2: 3/4 in x 10 ft in 100 ohm m has 32 ohm.
    Worked.out("earth-rod", "resistivity=100 ohm m", "length=10 ft", "diameter=3/4 in")
        .gives("resistance", 32, 0.5)
        .gives("resistance", 32.14)
        .means("not likely to do");
  }

  // Worked by hand from Dwight's formula, with the radius: ohm m, length, diameter, ohm. The third
  // is
  // a published example corrected (it took the diameter for the radius and dropped the -1).
  @ParameterizedTest
  @CsvSource({
    "100, 8 ft, 5/8 in, 39.90",
    "100, 10 ft, 5/8 in, 33.09",
    "100, 3 m, 16 mm, 33.49",
    "30, 8 ft, 5/8 in, 11.97",
    "62.65, 8 ft, 5/8 in, 25.00",
  })
  void one_rod(String resistivity, String length, String diameter, double ohms) {
    Worked.out(
            "earth-rod", "resistivity=" + resistivity, "length=" + length, "diameter=" + diameter)
        .gives("resistance", ohms)
        .doesNotTell("range");
  }

  @Test
  void soil_that_just_does() {
    Worked.out("earth-rod", "soil=clay").gives("soil-for-limit", 62.65).means("likely to do");
    // National Bureau of Standards report 108: clay 40.6 (3.4 to 163) ohm m.
    Worked clay = Worked.out("earth-rod", "soil=clay").gives("resistivity-used", 40.6);
    assertThat(clay.solution().line("range").text().replace('\u00a0', ' '))
        .isEqualTo("1.36 ohm to 65 ohm");
    assertThatThrownBy(() -> Worked.out("earth-rod")).hasMessageStartingWith("Give soil or");
  }

  @Test
  void doubt_of_a_rod_is_that_of_the_soil() {
    // The resistance is proportional to the resistivity: limits of 50 % are 28.87 % of 39.90 ohm.
    Worked.out("earth-rod", "resistivity=100 ohm m +- 50 %").isUncertainBy("resistance", 11.52);
  }

  // Two rods of 5/8 in, mean potential integrated by a second program: ft, ft apart, ohm in 100 ohm
  // m, share.
  @ParameterizedTest
  @CsvSource({
    "8, 6, 23.26, 58.30",
    "8, 16, 21.48, 53.83",
    "10, 6, 19.61, 59.26",
    "10, 20, 17.76, 53.69"
  })
  void two_rods(double length, double spacing, double ohms, double share) {
    Worked.out(
            "earth-rods",
            "resistivity=100 ohm m",
            "length=" + length + " ft",
            "spacing=" + spacing + " ft")
        .gives("together", ohms)
        .gives("share", share);
  }

  @Test
  void two_rods_by_the_series_of_the_handbook() {
    // IEEE 142, worked by hand: 8 ft x 5/8 in, 6 ft apart, ln(4L/a) = 7.114, close series 23.26 ohm
    // of
    // 39.90; 16 ft apart, distant series 21.49.
    assertThat(EarthRod.pairOverSingle(8 * FOOT, 0.0079375, 6 * FOOT))
        .isCloseTo(23.26 / 39.90, within(3e-4));
    assertThat(EarthRod.pairOverSingle(8 * FOOT, 0.0079375, 16 * FOOT))
        .isCloseTo(21.49 / 39.90, within(5e-4));
    // Far apart they are half of one, touching almost all of it.
    assertThat(EarthRod.pairOverSingle(8 * FOOT, 0.0079375, 10_000)).isCloseTo(0.5, within(1e-3));
    assertThat(EarthRod.pairOverSingle(8 * FOOT, 0.0079375, 0.016)).isBetween(0.9, 1.0);
  }

  @Test
  void more_rods() {
    // IEEE 142 multiplying factors, from memory: 1.29 for 3, 1.36 for 4, 1.68 for 8 rods.
    Worked.out("earth-rods", "one-rod=60 ohm", "rods=3", "spacing=8 ft")
        .gives("together", 25.8)
        .says("needed", "4");
    Worked.out("earth-rods", "one-rod=60 ohm", "rods=8", "spacing=3 m").gives("together", 12.6);
    assertThat(
            Worked.out("earth-rods", "one-rod=60 ohm", "rods=4", "spacing=1 m")
                .solution()
                .remarks())
        .hasSize(2);
  }

  @Test
  void a_reading_against_the_code() {
    // NEC 250.53(A)(2) and exception: 25 ohm for a single rod. 120 V over 25 ohm drives 4.8 A.
    Worked.out("earth-reading", "measured=25 ohm")
        .says("verdict", "within the figure")
        .gives("fault-current", 4.8)
        .means("4.8 A", "protective conductor");
    Worked.out("earth-reading", "measured=31 ohm")
        .gives("margin", -6)
        .says("verdict", "add a second rod");
    Worked.out("earth-reading", "measured=31 ohm", "rods=2")
        .says("verdict", "above, but supplemented");
    Worked.out("earth-reading", "measured=24 ohm +- 5 ohm").means("uncertainty of the reading");
  }

  // NEC 250.53(A)(3), from memory: 6 ft at least.
  @Test
  void rods_too_close_to_each_other() {
    org.assertj.core.api.Assertions.assertThat(
            Worked.out("earth-rods", "soil=clay", "spacing=3 ft").solution().remarks())
        .singleElement()
        .asString()
        .contains("3 ft apart", "6 ft (1.8 m)");
    org.assertj.core.api.Assertions.assertThat(
            Worked.out("earth-rods", "soil=clay", "spacing=6 ft").solution().remarks())
        .isEmpty();
  }
}
