package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import yett.quantity.Quantity;
import yett.quantity.ReadingException;
import yett.quantity.Unit;
import yett.quantity.Units;

class MeasuresTest {
  private static final Measures SI =
      new Measures(Quantity.LENGTH, Unit.METRE, "", "tape", 0, 1000, 20000);
  private static final Measures US = SI.in(Units.US);

  /** 1 ft = 0.3048 m, 1 in = 25.4 mm (NIST SP 811). */
  @Test
  void a_reading_stays_as_it_was_typed_and_is_shown_in_the_units_of_whoever_reads_it() {
    assertThat(US.told("20 ft 4 in")).isEqualTo("20\u00a0ft\u00a04\u00a0in");
    assertThat(SI.told("20 ft 4 in")).isEqualTo("20\u00a0ft\u00a04\u00a0in (6.2 m)");
    assertThat(SI.told("6 m")).isEqualTo("6\u00a0m");
    assertThat(US.told("6 m")).isEqualTo("6\u00a0m (19.7 ft)");
  }

  @Test
  void a_bare_number_takes_the_unit_that_was_asked_for_and_keeps_it() {
    assertThat(US.unitWord()).isEqualTo("ft");
    assertThat(US.asStored("20")).isEqualTo("20 ft");
    assertThat(SI.parse(US.asStored("20"))).isCloseTo(6096, within(1e-9));
    assertThat(SI.asStored("6")).isEqualTo("6");
    assertThat(US.asStored("6 m")).isEqualTo("6 m");
  }

  @Test
  void what_is_stored_means_the_same_whoever_reads_it() {
    assertThat(US.parse("6")).isEqualTo(SI.parse("6"));
    assertThat(US.possible(US.parse("20 ft 4 in"))).isTrue();
  }

  @Test
  void a_range_is_shown_in_the_units_of_whoever_reads_it() {
    assertThat(SI.showRounded(6096)).isEqualTo("6.1 m");
    assertThat(US.showRounded(6096)).isEqualTo("20 ft");
    assertThat(US.show(6096)).isEqualTo("20 ft");
  }

  /** A tape in millimetres, an ohm-meter to a tenth of an ohm (shared/instruments.csv). */
  @Test
  void a_range_is_told_no_finer_than_its_instrument_reads() {
    Measures tape = new Measures(Quantity.LENGTH, Unit.MILLIMETRE, "", "tape", 0, 0, 5000);
    assertThat(tape.showRounded(90.1)).isEqualTo("90 mm");
    assertThat(tape.showRounded(1234)).isEqualTo("1230 mm");
    assertThat(tape.showRounded(2.54)).isEqualTo("2.54 mm");
    assertThat(tape.in(Units.US).showRounded(90.1)).isEqualTo("3.55 in");
    Measures ohms = new Measures(Quantity.RESISTANCE, Unit.OHM, "", "meter-ohms", 0.3, 0, 1e8);
    assertThat(ohms.showRounded(1.23)).isEqualTo("1.2 ohm");
    assertThat(ohms.showRounded(0.25)).isEqualTo("0.25 ohm");
  }

  /** What meters show of an open pair of wires. */
  @Test
  void over_range_is_an_open_circuit_where_a_resistance_is_measured_and_nothing_else() {
    Measures ohms = new Measures(Quantity.RESISTANCE, Unit.OHM, "", "meter-ohms", 0.3, 0, 1e8);
    for (String shown :
        new String[] {"OL", "O.L", "0L", "ol", "open", "Open circuit", "infinite"}) {
      assertThat(ohms.parse(ohms.asStored(shown))).isEqualTo(1e8);
      assertThat(ohms.possible(ohms.parse(shown))).isTrue();
    }
    assertThat(ohms.told("OL")).isEqualTo("OL");
    Measures volts = new Measures(Quantity.VOLTAGE, Unit.VOLT, "", "meter-dc-volts", 0.1, 0, 60);
    assertThatThrownBy(() -> volts.parse("OL")).isInstanceOf(ReadingException.class);
    assertThatThrownBy(() -> volts.parse("open")).hasMessageContaining("no number in \"open\"");
  }

  /** 1.86 mm is 0.07323 in, and 2 1/4 in is 57.15 mm; nobody measured either so exactly. */
  @Test
  void a_kept_value_has_no_more_digits_than_it_was_read_with() {
    Measures tape = new Measures(Quantity.LENGTH, Unit.MILLIMETRE, "", "tape", 0, 0, 5000);
    assertThat(tape.showRead(1.86)).isEqualTo("1.86 mm");
    assertThat(tape.in(Units.US).showRead(1.86)).isEqualTo("0.0732 in");
    assertThat(tape.showRead(57.15)).isEqualTo("57 mm");
    assertThat(tape.in(Units.US).showRead(57.15)).isEqualTo("2.25 in");
    assertThat(tape.in(Units.US).showRead(59)).isEqualTo("2.32 in");
  }

  @Test
  void a_change_has_few_digits_in_the_units_of_whoever_reads_it() {
    Measures tape = new Measures(Quantity.LENGTH, Unit.MILLIMETRE, "", "tape", 0, 0, 5000);
    assertThat(tape.showChange(14, 2)).isEqualTo("14 mm");
    assertThat(tape.in(Units.US).showChange(14, 2)).isEqualTo("0.55 in");
  }
}
