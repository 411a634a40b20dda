package yett.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
  // Factors: NIST SP 811 (2008), appendix B.8; those without an uncertainty there are exact.
  @ParameterizedTest
  @CsvSource({
    "INCH, 25.4",
    "FOOT, 304.8",
    "POUND_FORCE, 4.4482216152605",
    "KILOGRAM_FORCE, 9.80665",
    "POUND, 0.45359237",
    "MILE_PER_HOUR, 0.44704",
    "FOOT_PER_SECOND, 0.3048",
    "FOOT_PER_MINUTE, 0.00508",
    "MINUTE, 60",
    "HOUR, 3600",
  })
  void factors_are_those_of_nist(Unit unit, double factor) {
    assertThat(unit.toCanonical(1)).isCloseTo(factor, within(Math.ulp(factor)));
    assertThat(unit.fromCanonical(factor)).isCloseTo(1, within(1e-15));
  }

  // NIST SP 811, B.8, "horsepower (550 ft lbf/s)" 7.456 999 E+02 and "kilometer per hour"
  // 2.777 778 E-01: given to seven digits.
  @ParameterizedTest
  @CsvSource({"HORSEPOWER, 745.6999", "KILOMETRE_PER_HOUR, 0.2777778"})
  void rounded_factors_agree_with_nist(Unit unit, double factor) {
    assertThat(unit.toCanonical(1)).isCloseTo(factor, within(factor * 1e-6));
  }

  // Ice point, steam point, the crossing of the scales, absolute zero: NIST SP 811, B.8,
  // t/degC = (t/degF - 32)/1.8.
  @ParameterizedTest
  @CsvSource({
    "FAHRENHEIT, 32, 0",
    "FAHRENHEIT, 212, 100",
    "FAHRENHEIT, -40, -40",
    "FAHRENHEIT, -459.67, -273.15",
  })
  void temperatures_convert_with_their_zero_point(Unit unit, double value, double celsius) {
    assertThat(unit.toCanonical(value)).isCloseTo(celsius, within(1e-12));
    assertThat(unit.fromCanonical(celsius)).isCloseTo(value, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void every_unit_comes_back_from_its_own_quantity_and_spellings(Unit unit) {
    assertThat(unit.fromCanonical(unit.toCanonical(12.5))).isCloseTo(12.5, within(1e-11));
    assertThat(unit.spellings()).allSatisfy(s -> assertThat(Unit.find(s)).contains(unit));
    assertThat(unit.quantity().canonical().toCanonical(3.25)).isEqualTo(3.25);
  }

  @ParameterizedTest
  @CsvSource({"MV", "MA", "MOHM", "MAH", "furlong", "Mv"})
  void a_spelling_that_may_be_milli_or_mega_is_not_guessed(String spelling) {
    assertThat(Unit.find(spelling)).isEmpty();
  }

  @Test
  void an_unknown_unit_on_a_card_is_answered_with_the_nearest() {
    assertThatThrownBy(() -> Unit.parse("Mv"))
        .hasMessage("\"Mv\" is not a known unit; did you mean mV?");
    assertThatThrownBy(() -> Unit.parse("furlongs"))
        .hasMessage(
            "\"furlongs\" is not a known unit; write it like mm, V, A, ohm, degC, s, N, kg,"
                + " m/s or %.");
  }

  @Test
  void a_quantity_is_found_by_name() {
    assertThat(Quantity.named("length")).isEqualTo(Quantity.LENGTH);
    assertThatThrownBy(() -> Quantity.named("lenght"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("unknown quantity \"lenght\"; did you mean length?");
  }

  @ParameterizedTest
  @CsvSource({
    "VOLTAGE, VOLT, 24.3, 24.3 V",
    "VOLTAGE, VOLT, 12.654, 12.65 V",
    "VOLTAGE, VOLT, 24.300000000000004, 24.3 V",
    "RESISTANCE, OHM, 0.4, 0.4 ohm",
    "RESISTANCE, OHM, 0.052, 0.052 ohm",
    "RESISTANCE, MILLIOHM, 0.052, 52 mohm",
    "RESISTANCE, OHM, 123456.7, 123457 ohm",
    "RESISTANCE, OHM, 1e9, 1e9 ohm",
    "RESISTANCE, OHM, 0.0000123456, 1.235e-5 ohm",
    "LENGTH, MILLIMETRE, 190, 190 mm",
    "LENGTH, MILLIMETRE, 1234.56, 1235 mm",
    "LENGTH, MILLIMETRE, -0.00004, -4e-5 mm",
    "LENGTH, INCH, 190.5, 7.5 in",
    "LENGTH, MILLIMETRE, 0, 0 mm",
    "LENGTH, MILLIMETRE, -0.0, 0 mm",
    "TEMPERATURE, FAHRENHEIT, 21, 69.8 degF",
    "TEMPERATURE, CELSIUS, -12, -12 degC",
    "COUNT, ONE, 12, 12",
    "RATIO, PERCENT, 3, 3 %",
  })
  void values_show_with_sensible_digits(Quantity quantity, Unit unit, double value, String shown) {
    assertThat(quantity.show(value, unit)).isEqualTo(shown);
    assertThat(Reading.parse(shown, quantity, unit).value())
        .isCloseTo(value, within(Math.max(5e-4 * Math.abs(value), 1e-9)));
  }

  @Test
  void showing_does_not_depend_on_the_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(Quantity.VOLTAGE.show(24.3, Unit.VOLT)).isEqualTo("24.3 V");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void us_customary_differs_where_the_trade_differs() {
    assertThat(Units.US.preferred(Quantity.LENGTH)).isEqualTo(Unit.INCH);
    assertThat(Units.US.preferred(Quantity.FORCE)).isEqualTo(Unit.POUND_FORCE);
    assertThat(Units.US.preferred(Quantity.VOLTAGE)).isEqualTo(Unit.VOLT);
    assertThat(Units.SI.preferred(Quantity.TEMPERATURE)).isEqualTo(Unit.CELSIUS);
  }

  @Test
  void a_unit_of_another_quantity_is_a_fault_of_the_caller() {
    assertThatThrownBy(() -> Quantity.LENGTH.show(1, Unit.VOLT))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("VOLT measures voltage, not length");
    assertThatThrownBy(() -> Quantity.LENGTH.show(Double.NaN, Unit.METRE))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
