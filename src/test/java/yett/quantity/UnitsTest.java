package yett.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {

  /** NIST SP 811 (2008), appendix B.8: factors from the unit typed to the SI unit. */
  @ParameterizedTest
  @CsvSource({
    "METRE, FOOT, 0.3048",
    "MILLIMETRE, INCH, 25.4",
    "KILOGRAM, POUND, 0.45359237",
    "NEWTON, POUND_FORCE, 4.448222",
    "METRE_PER_SECOND, FOOT_PER_SECOND, 0.3048",
    "JOULE, FOOT_POUND, 1.355818",
  })
  void one_us_unit_is_so_many_si_ones_by_nist_sp_811(Unit si, Unit us, double factor) {
    assertThat(Units.US.of(si)).isEqualTo(us);
    assertThat(Units.SI.of(us)).isEqualTo(si);
    assertThat(si.fromCanonical(us.toCanonical(1))).isCloseTo(factor, within(1e-6 * factor));
  }

  /** NIST SP 811, appendix B.8: t/degC = (t/degF - 32)/1.8. */
  @Test
  void degrees_fahrenheit_by_nist_sp_811() {
    assertThat(Units.US.of(Unit.CELSIUS)).isEqualTo(Unit.FAHRENHEIT);
    assertThat(Unit.FAHRENHEIT.toCanonical(59)).isCloseTo(15, within(1e-9));
  }

  @Test
  void volts_are_volts_in_both() {
    assertThat(Units.US.of(Unit.VOLT)).isEqualTo(Unit.VOLT);
    assertThat(Units.SI.of(Unit.VOLT)).isEqualTo(Unit.VOLT);
  }

  /** ASTM B258, table 1: 14 AWG 2.08 mm2, 10 AWG 5.26 mm2, 4/0 AWG 107 mm2. */
  @ParameterizedTest
  @CsvSource({"14, 2.08", "10, 5.26", "1, 42.4", "-3, 107.2"})
  void cross_sections_of_wire_gauges_by_astm_b258(int gauge, double area) {
    assertThat(WireGauge.area(gauge)).isCloseTo(area, within(0.005 * area));
    String name = gauge > 0 ? String.valueOf(gauge) : 1 - gauge + "/0";
    assertThat(WireGauge.nearest(area)).isEqualTo("near " + name + " AWG");
  }

  /**
   * 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, 1 lbf = 4.448222 N (NIST SP 811), as
   * fine as the value was written: a ball of 57 mm is the 2 1/4 in one of ASTM F2200.
   */
  @ParameterizedTest
  @CsvSource({
    "'at least 254 mm', 'at least 10 in'",
    "'2 mm to 4 mm of play', '0.08 in to 0.16 in of play'",
    "'10 to 20 mm', '0.4 to 0.8 in'",
    "'a span of 5.2 m: so', 'a span of 17 ft: so'",
    "'push it with 89 N', 'push it with 20 lbf'",
    "'a ball of 57 mm', 'a ball of 2.25 in'",
    "'up to 1.8 m', 'up to 6 ft'",
    "'at least 50 mm', 'at least 2 in'",
    "'a leaf of 350 kg', 'a leaf of 770 lb'",
    "'not over 380 N', 'not over 85 lbf'",
    "'between 25 kg', 'between 55 lb'",
    "'at 0.25 m/s', 'at 0.82 ft/s'",
    "'0.0 mm off', '0 in off'",
    "'at 15 degC', 'at 59 degF'",
    "'below -40 degC', 'below -40 degF'",
    "'a feeder of 2.5 mm2', 'a feeder of 2.5 mm2 (near 13 AWG)'",
    "'24 V, 3 min, 5 A, 2 %', '24 V, 3 min, 5 A, 2 %'",
    "'No. 40, 5 members', 'No. 40, 5 members'",
  })
  void sentences_in_us_customary_units(String si, String us) {
    assertThat(Units.US.in(si)).isEqualTo(us);
    assertThat(Units.SI.in(si)).isEqualTo(si);
  }

  @Test
  void what_somebody_typed_stays_as_it_is() {
    assertThat(Units.US.in("6\u00a0m")).isEqualTo("6\u00a0m");
  }
}
