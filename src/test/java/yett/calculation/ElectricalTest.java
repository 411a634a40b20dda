package yett.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElectricalTest {
  private static final double FOOT = 0.3048;

  private static Offset<Double> fourDigits(double expected) {
    return within(Math.abs(expected) * 5e-4);
  }

  private static Conductor of(List<Conductor> sizes, String size) {
    return sizes.stream().filter(c -> c.size().equals(size)).findFirst().orElseThrow();
  }

  // Stranded in ohm/km at 75 degC: NEC chapter 9, table 8, times 3.28084.
  @ParameterizedTest
  @CsvSource({
    "18 AWG, 26.08",
    "16 AWG, 16.37",
    "14 AWG, 10.30",
    "12 AWG, 6.496",
    "10 AWG, 4.068",
    "8 AWG, 2.552",
    "6 AWG, 1.611",
    "4 AWG, 1.010",
    "2 AWG, 0.6365",
  })
  void american_sizes_are_those_of_table_8(String size, double ohmPerKilometre) {
    assertThat(of(Conductor.AWG_STRANDED, size).at(75) * 1000)
        .isCloseTo(ohmPerKilometre, fourDigits(ohmPerKilometre));
  }

  @Test
  void solid_wire_is_not_stranded_wire() {
    // NEC chapter 9, table 8: 12 AWG 1.93 solid, 1.98 stranded, ohm per 1000 ft.
    assertThat(of(Conductor.AWG_SOLID, "12 AWG").at(75) * 1000 * FOOT)
        .isCloseTo(1.93, within(1e-9));
    assertThat(of(Conductor.AWG_STRANDED, "12 AWG").at(75) * 1000 * FOOT)
        .isCloseTo(1.98, within(1e-9));
  }

  // Physics beside the table: solid wire of ASTM B258 diameter 0.127 mm x 92^((36-n)/39) and
  // annealed copper of 1/58 ohm mm2/m at 20 degC (IEC 60028). The table agrees within 1 %.
  @ParameterizedTest
  @CsvSource({"18", "16", "14", "12", "10", "8"})
  void the_table_agrees_with_the_diameter_of_the_wire(int gauge) {
    double diameter = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
    double physics = 1 / 58.0 / (Math.PI * diameter * diameter / 4);

    assertThat(of(Conductor.AWG_SOLID, gauge + " AWG").at(20))
        .isCloseTo(physics, within(physics * 0.01));
  }

  // NEC table 8 note, 0.00323 1/K: 12 AWG stranded, ohm per 1000 ft, worked by hand.
  @ParameterizedTest
  @CsvSource({"20, 1.628", "25, 1.660", "0, 1.500", "-20, 1.372"})
  void american_sizes_cool_by_the_table_note(double temperature, double ohmPerThousandFeet) {
    assertThat(of(Conductor.AWG_STRANDED, "12 AWG").at(temperature) * 1000 * FOOT)
        .isCloseTo(ohmPerThousandFeet, fourDigits(ohmPerThousandFeet));
  }

  // IEC 60228, maximum at 20 degC, ohm/km.
  @ParameterizedTest
  @CsvSource({
    "0.75, 24.5, 26.0", "1, 18.1, 19.5", "1.5, 12.1, 13.3", "2.5, 7.41, 7.98", "4, 4.61, 4.95",
    "6, 3.08, 3.30", "10, 1.83, 1.91", "16, 1.15, 1.21", "25, 0.727, 0.780", "35, 0.524, 0.554",
    "50, 0.387, 0.386",
  })
  void metric_sizes_are_those_of_iec_60228(String area, double class2, double class5) {
    assertThat(of(Conductor.IEC_CLASS_2, area + " mm2").at(20) * 1000)
        .isCloseTo(class2, within(1e-9));
    assertThat(of(Conductor.IEC_CLASS_5, area + " mm2").at(20) * 1000)
        .isCloseTo(class5, within(1e-9));
  }

  @Test
  void metric_sizes_warm_by_the_copper_standard() {
    Conductor wire = of(Conductor.IEC_CLASS_2, "2.5 mm2");
    // Worked by hand with 0.00393 1/K: 8.866 ohm/km at 70 degC.
    assertThat(wire.at(70) * 1000).isCloseTo(8.866, fourDigits(8.866));
    // IEC 60228 correction factors to 20 degC, 250/(230 + T): 1.064 at 5, 0.926 at 40, 0.820 at 75.
    assertThat(wire.at(20) / wire.at(5)).isCloseTo(1.064, within(0.004));
    assertThat(wire.at(20) / wire.at(40)).isCloseTo(0.926, within(0.004));
    assertThat(wire.at(20) / wire.at(75)).isCloseTo(0.820, within(0.004));
  }

  // Worked by hand from 2 I L R: A, ft one way, size, V.
  @ParameterizedTest
  @CsvSource({
    "10, 50, 12 AWG, 1.980",
    "15, 30, 10 AWG, 1.116",
    "5, 200, 12 AWG, 3.960",
    "2, 100, 18 AWG, 3.180",
    "15, 50, 12 AWG, 2.970",
  })
  void drop_on_american_sizes(double current, double feet, String size, double volts) {
    assertThat(of(Conductor.AWG_STRANDED, size).drop(current, feet * FOOT, 75))
        .isCloseTo(volts, fourDigits(volts));
  }

  @Test
  void drop_on_other_sizes() {
    // Worked by hand: 120 V, 8 A, 150 ft of 14 AWG solid; 6 A over 25 m and 10 A over 20 m metric.
    assertThat(of(Conductor.AWG_SOLID, "14 AWG").drop(8, 150 * FOOT, 75))
        .isCloseTo(7.368, fourDigits(7.368));
    assertThat(of(Conductor.IEC_CLASS_2, "2.5 mm2").drop(6, 25, 20)).isCloseTo(2.223, within(1e-9));
    assertThat(of(Conductor.IEC_CLASS_2, "2.5 mm2").drop(6, 25, 70))
        .isCloseTo(2.660, fourDigits(2.660));
    assertThat(of(Conductor.IEC_CLASS_5, "2.5 mm2").drop(10, 20, 20))
        .isCloseTo(3.192, within(1e-9));
    assertThat(of(Conductor.IEC_CLASS_5, "2.5 mm2").drop(10, 20, 40))
        .isCloseTo(3.443, fourDigits(3.443));
  }

  @Test
  void smallest_size_for_a_limit() {
    // Worked by hand: at 3 % of 24 V and 10 A, 10 AWG reaches 29.03 ft and 12 AWG 18.18 ft.
    assertThat(Conductor.smallest(Conductor.AWG_STRANDED, 10, 29.0 * FOOT, 75, 0.72))
        .contains(of(Conductor.AWG_STRANDED, "10 AWG"));
    assertThat(Conductor.smallest(Conductor.AWG_STRANDED, 10, 29.1 * FOOT, 75, 0.72))
        .contains(of(Conductor.AWG_STRANDED, "8 AWG"));
    assertThat(Conductor.smallest(Conductor.AWG_STRANDED, 10, 18.1 * FOOT, 75, 0.72))
        .contains(of(Conductor.AWG_STRANDED, "12 AWG"));
    assertThat(Conductor.smallest(Conductor.AWG_SOLID, 50, 100, 75, 0.72)).isEmpty();
  }

  // Worked by hand, ideal transformer: rated, input, tap, secondary.
  @ParameterizedTest
  @CsvSource({
    "24, 120, 240, 12.00",
    "24, 240, 120, 48.00",
    "24, 208, 240, 20.80",
    "24, 240, 208, 27.69",
    "24, 120, 115, 25.04",
    "24, 208, 230, 21.70",
  })
  void a_wrong_tap_scales_the_secondary(double rated, double input, double tap, double volts) {
    assertThat(SupplySetting.secondaryVoltage(rated, input, tap))
        .isCloseTo(volts, fourDigits(volts));
  }

  // Worked by hand from peak = √2 and mean = 0.9003 of rms: rms, peak, peak less 1.4 V, mean.
  @ParameterizedTest
  @CsvSource({
    "24.00, 33.94, 32.54, 21.61",
    "26.00, 36.77, 35.37, 23.41",
    "20.80, 29.42, 28.02, 18.73",
    "12.00, 16.97, 15.57, 10.80",
  })
  void a_rectifier_shows_peak_or_mean(double rms, double peak, double bridge, double mean) {
    assertThat(SupplySetting.rectifiedPeak(rms, 0)).isCloseTo(peak, fourDigits(peak));
    assertThat(SupplySetting.rectifiedPeak(rms, 1.4)).isCloseTo(bridge, fourDigits(bridge));
    assertThat(SupplySetting.rectifiedMean(rms)).isCloseTo(mean, fourDigits(mean));
  }

  @Test
  void service_voltage_bands() {
    // ANSI C84.1 Range A: 114 to 126 V, 228 to 252 V, 456 to 504 V; 208 V before its rounding.
    assertRange(ServiceVoltage.rangeA(120), 114, 126);
    assertRange(ServiceVoltage.rangeA(208), 197.6, 218.4);
    assertRange(ServiceVoltage.rangeA(240), 228, 252);
    assertRange(ServiceVoltage.rangeA(480), 456, 504);
    // EN 50160: 207 to 253 V at 230 V.
    assertRange(ServiceVoltage.en50160(230), 207, 253);
    assertThat(ServiceVoltage.rangeA(120).contains(112)).isFalse();
  }

  private static void assertRange(Range range, double low, double high) {
    assertThat(range.low()).isCloseTo(low, within(0.005));
    assertThat(range.high()).isCloseTo(high, within(0.005));
  }

  @Test
  void impossible_arguments_are_named_with_their_value() {
    assertThatThrownBy(() -> of(Conductor.AWG_SOLID, "12 AWG").at(130))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("temperature must be from -40.0 to 100.0, not 130.0");
    assertThatThrownBy(() -> SupplySetting.secondaryVoltage(24, 120, 0))
        .hasMessage("tap voltage must be more than 0, not 0.0");
    assertThatThrownBy(() -> ServiceVoltage.rangeA(Double.NaN))
        .hasMessage("nominal voltage must be more than 0, not NaN");
  }
}
