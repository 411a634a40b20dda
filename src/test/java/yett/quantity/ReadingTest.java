package yett.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.testing.Size;

class ReadingTest {
  private static Reading parse(String typed, Quantity quantity) {
    return Reading.parse(typed, quantity, quantity.canonical());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          VOLTAGE     | 24.3 V            | 24.3
          VOLTAGE     | 24.3V             | 24.3
          VOLTAGE     | 24,3 V            | 24.3
          VOLTAGE     | 24.3              | 24.3
          VOLTAGE     | 24.3 v            | 24.3
          VOLTAGE     | 24.3 volts        | 24.3
          VOLTAGE     | 24 VDC            | 24
          VOLTAGE     | 118 V AC          | 118
          VOLTAGE     | 450 mV            | 0.45
          VOLTAGE     | 450 mv            | 0.45
          VOLTAGE     | 1.2 kV            | 1200
          VOLTAGE     | 1.2 KV            | 1200
          VOLTAGE     | +3                | 3
          VOLTAGE     | .5                | 0.5
          VOLTAGE     | ,5                | 0.5
          VOLTAGE     | 24.              | 24
          VOLTAGE     | 0,125             | 0.125
          VOLTAGE     | 12,6543           | 12.6543
          VOLTAGE     | -0 V              | 0
          TIME        | half a minute     | 30
          TIME        | a minute          | 60
          TIME        | a minute and a half | 90
          TIME        | one and a half minutes | 90
          TIME        | ten seconds       | 10
          TIME        | twenty-five seconds | 25
          TIME        | seventeen s       | 17
          TIME        | about half a minute | 30
          TIME        | three quarters of an hour | 2700
          LENGTH      | half an inch      | 12.7
          LENGTH      | a quarter of an inch | 6.35
          LENGTH      | two and a half inches | 63.5
          LENGTH      | 190 mm            | 190
          LENGTH      | 190 MM            | 190
          LENGTH      | 19 cm             | 190
          LENGTH      | 1.9 m             | 1900
          LENGTH      | 1 m 20 cm         | 1200
          LENGTH      | 7 1/2 in          | 190.5
          LENGTH      | 7-1/2 in          | 190.5
          LENGTH      | 7½ in             | 190.5
          LENGTH      | 7 ½ in            | 190.5
          LENGTH      | 7-½"              | 190.5
          LENGTH      | ½"                | 12.7
          LENGTH      | 1/2"              | 12.7
          LENGTH      | 1⁄2 in            | 12.7
          LENGTH      | 7.5 in.           | 190.5
          LENGTH      | 7.5 inches        | 190.5
          LENGTH      | 7.5''             | 190.5
          LENGTH      | 7' 6"             | 2286
          LENGTH      | 7'6"              | 2286
          LENGTH      | 7'-6"             | 2286
          LENGTH      | 7’ 6”             | 2286
          LENGTH      | 7′ 6″             | 2286
          LENGTH      | 7 ft 6 in         | 2286
          LENGTH      | 7 ft. 6 in.       | 2286
          LENGTH      | 7 feet 6 inches   | 2286
          LENGTH      | 7' 6 1/2"         | 2298.7
          LENGTH      | 7' 6-1/2"         | 2298.7
          LENGTH      | 7 ft              | 2133.6
          LENGTH      | 7'                | 2133.6
          LENGTH      | 1,234.5 mm        | 1234.5
          LENGTH      | 1.234,5 mm        | 1234.5
          LENGTH      | 1.234 m           | 1234
          LENGTH      | 1,234,567 mm      | 1234567
          LENGTH      | 1.234.567 mm      | 1234567
          LENGTH      | 1234,567 mm       | 1234.567
          LENGTH      | -7 1/2 in         | -190.5
          LENGTH      | -1 ft 6 in        | -457.2
          RESISTANCE  | 0.4 ohm           | 0.4
          RESISTANCE  | 0.4 Ω             | 0.4
          RESISTANCE  | 0.4 Ohms          | 0.4
          RESISTANCE  | 52 mohm           | 0.052
          RESISTANCE  | 52 mΩ             | 0.052
          RESISTANCE  | 8.2 kohm          | 8200
          RESISTANCE  | 8.2k              | 8200
          RESISTANCE  | 8.2 K             | 8200
          RESISTANCE  | 100 Mohm          | 1e8
          RESISTANCE  | 100 MΩ            | 1e8
          RESISTANCE  | 100 megohms       | 1e8
          RESISTANCE  | 100 M             | 1e8
          RESISTANCE  | 1e3 ohm           | 1000
          RESISTANCE  | 1.5E-2 ohm        | 0.015
          TEMPERATURE | -12 C             | -12
          TEMPERATURE | −12 °C            | -12
          TEMPERATURE | - 12 degC         | -12
          TEMPERATURE | 21°               | 21
          TEMPERATURE | 21 degrees        | 21
          TEMPERATURE | 70 °F             | 21.11111111
          TEMPERATURE | 32 degF           | 0
          TEMPERATURE | -40 F             | -40
          TEMPERATURE | 21 ° C            | 21
          TEMPERATURE | 21 ℃             | 21
          TIME        | 18 s              | 18
          TIME        | 18 sec            | 18
          TIME        | 750 ms            | 0.75
          TIME        | 1.5 min           | 90
          TIME        | 1 min 20 s        | 80
          TIME        | 1 h 5 min 20 s    | 3920
          TIME        | 24 hrs            | 86400
          CURRENT     | 5.8 A             | 5.8
          CURRENT     | 5.8 amps          | 5.8
          CURRENT     | 30 mA             | 0.03
          FORCE       | 34 lbf            | 151.239534918857
          FORCE       | 10 kgf            | 98.0665
          MASS        | 880 lbs           | 399.1612856
          SPEED       | 1 ft/s            | 0.3048
          SPEED       | 60 ft/min         | 0.3048
          SPEED       | 18 m/min          | 0.3
          ANGLE       | 2.5°              | 2.5
          RATIO       | 3%                | 3
          RATIO       | 3 percent         | 3
          COUNT       | 12                | 12
          POWER       | 0.35 kW           | 350
          CAPACITY    | 18 Ah             | 18
          CAPACITY    | 7200 mAh          | 7.2
          """)
  void a_reading_is_understood_as_people_type_it(Quantity quantity, String typed, double value) {
    assertThat(parse(typed, quantity).value())
        .isCloseTo(value, within(1e-9 * Math.max(1, Math.abs(value))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          LENGTH      | 24 V        | "V" is a voltage; this asks for a length in mm, e.g. 190 mm or 7 1/2 in.
          LENGTH      | 1,234       | "1,234" can be read in two ways; say 1234 or 1.234.
          LENGTH      | 12,345 mm   | "12,345" can be read in two ways; say 12345 or 12.345.
          LENGTH      | 7' 6        | "7' 6" lacks the unit after the feet; type it like 7 ft 6 in.
          LENGTH      | 7 ft 13 in  | "7 ft 13 in" does not add up; the ft must be whole, and the in less than 1 ft.
          LENGTH      | 7.5 ft 3 in | "7.5 ft 3 in" does not add up; the ft must be whole, and the in less than 1 ft.
          LENGTH      | 6 in 7 ft   | "6 in 7 ft" cannot be read; this asks for a length in mm, e.g. 190 mm or 7 1/2 in.
          VOLTAGE     | 18/24 V     | "18/24" may be two readings; type one, or the fraction as a decimal.
          LENGTH      | 7 3/2 in    | "7 3/2" has a fraction of one or more; type it like 7 1/2 or as 7.5.
          LENGTH      | 1/0 in      | "1/0" divides by zero; type it as a decimal.
          LENGTH      | 190 nm      | "nm" is not a unit of length; did you mean mm or cm or m?
          LENGTH      | 5 minches   | "minches" is not a unit of length; did you mean inches?
          LENGTH      | 5-7 mm      | "5-7 mm" looks like two readings; type one.
          LENGTH      | 5–7 mm      | "5–7 mm" looks like two readings; type one.
          LENGTH      | abc         | There is no number in "abc"; this asks for a length in mm, e.g. 190 mm or 7 1/2 in.
          LENGTH      | mm 190      | "mm 190" does not begin with a number; this asks for a length in mm, e.g. 190 mm or 7 1/2 in.
          VOLTAGE     | 24 MV       | "MV" is not a unit of voltage; did you mean mV?
          VOLTAGE     | 24.3 vlots  | "vlots" is not a unit of voltage; did you mean volt?
          VOLTAGE     | 24.3 qqqq   | "qqqq" is not a unit of voltage; use V, mV or kV.
          VOLTAGE     | NaN         | There is no number in "NaN"; this asks for a voltage in V, e.g. 24.3 V.
          VOLTAGE     | -Infinity   | There is no number in "-Infinity"; this asks for a voltage in V, e.g. 24.3 V.
          VOLTAGE     | 1e999       | "1e999" is too large to be a reading.
          VOLTAGE     | 1e-999      | "1e-999" is too small to be a reading.
          VOLTAGE     | 0x1p3       | "x" is not a unit of voltage; use V, mV or kV.
          VOLTAGE     | 24.3.1      | "24.3.1" is not a number; type it like 24.3, 1234 or 7 1/2.
          VOLTAGE     | 1,23,4      | "1,23,4" is not a number; type it like 24.3, 1234 or 7 1/2.
          VOLTAGE     | 24,         | "24," is not a number; type it like 24.3, 1234 or 7 1/2.
          VOLTAGE     | +-3         | "+-3" does not begin with a number; this asks for a voltage in V, e.g. 24.3 V.
          VOLTAGE     | ~24 V       | "~24 V" is not one number; type the reading without the sign.
          VOLTAGE     | 24 25       | "24 25" cannot be read; this asks for a voltage in V, e.g. 24.3 V.
          VOLTAGE     | 24 V 3 mV   | "24 V 3 mV" cannot be read; this asks for a voltage in V, e.g. 24.3 V.
          RESISTANCE  | 5 MOHM      | "MOHM" is not a unit of resistance; did you mean mohm or Mohm?
          RESISTANCE  | OL          | "OL" means that the meter is out of its range; choose another range, or say that you cannot tell.
          RESISTANCE  | 0.L         | "0.L" means that the meter is out of its range; choose another range, or say that you cannot tell.
          VOLTAGE     | 4.7 k       | "k" is not a unit of voltage; use V, mV or kV.
          RESISTANCE  | >200 Mohm   | ">200 Mohm" is not one number; type the reading without the sign.
          TEMPERATURE | -300 C      | "-300 C" is colder than anything can be; this asks for a temperature in degC, e.g. 21 degC or 70 degF.
          FORCE       | 75 lb       | "lb" is a mass; this asks for a force in N, e.g. 150 N or 34 lbf.
          TIME        | 5 m         | "m" is a length; this asks for a time in s, e.g. 18 s or 1.5 min.
          TIME        | 1 min 75 s  | "1 min 75 s" does not add up; the min must be whole, and the s less than 1 min.
          ANGLE       | 3 V         | "V" is a voltage; this asks for an angle in deg, e.g. 2.5 deg.
          COUNT       | 12 links    | "links" is not a unit of count; type the number alone.
          COUNT       | 12 V        | "V" is a voltage; this asks for a count, e.g. 12.
          COUNT       | ٣           | There is no number in "٣"; this asks for a count, e.g. 12.
          """)
  void what_cannot_be_taken_is_refused_in_one_plain_sentence(
      Quantity quantity, String typed, String message) {
    assertThatThrownBy(() -> parse(typed, quantity))
        .isExactlyInstanceOf(ReadingException.class)
        .hasMessage(message);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "   ",
        "\u00a0",
        "\t\n",
        "2\u00004 V",
        "24\u001b[2J V",
        "24\u200b V",
        "24\u202e V",
        "24 \ud800",
        "1/2/3 in",
        "1½½ in",
        "1½5 in",
        "1.½ in",
        "7 6 in",
        "7 in6",
        "5 V-",
        "5..2",
        "1e",
        "e5",
        "--5",
        "1_000",
        "24 V 24 V",
        "½/3 in",
        "1e½",
        "7 ft .5",
        "7 ft -6 in -3",
        "１２ V",
        "5 😀",
        "24 V;rm",
        "999999999999999999999999999999999999999999999999999999999999999"
      })
  void what_is_no_reading_is_refused_for_every_quantity(String typed) {
    for (Quantity quantity : Quantity.values()) {
      assertThatThrownBy(() -> parse(typed, quantity)).isExactlyInstanceOf(ReadingException.class);
    }
  }

  @Test
  void a_message_never_carries_control_characters_to_the_terminal() {
    assertThatThrownBy(() -> parse("24\u001b[31m V", Quantity.VOLTAGE))
        .hasMessage("\"24?[31m V\" holds a character that cannot be printed; type it again.");
  }

  @Test
  void a_bare_number_takes_the_shown_unit() {
    Reading reading = Reading.parse("\u00a07 1/2 ", Quantity.LENGTH, Unit.INCH);

    assertThat(reading.value()).isEqualTo(190.5);
    assertThat(reading.unit()).isEqualTo(Unit.INCH);
    assertThat(reading.shown()).isEqualTo("7.5 in");
    assertThat(Reading.parse("70°", Quantity.TEMPERATURE, Unit.FAHRENHEIT).shown())
        .isEqualTo("70 degF");
  }

  @Test
  void the_question_names_the_shown_unit() {
    assertThatThrownBy(() -> Reading.parse("24 V", Quantity.LENGTH, Unit.INCH))
        .hasMessage(
            "\"V\" is a voltage; this asks for a length in inches, e.g. 190 mm or 7 1/2 in.");
  }

  @Test
  void a_number_without_unit_never_joins_feet_and_inches() {
    assertThatThrownBy(() -> Reading.parse("7 6 in", Quantity.LENGTH, Unit.FOOT))
        .isInstanceOf(ReadingException.class);
    assertThatThrownBy(() -> Reading.parse("7' 6", Quantity.LENGTH, Unit.INCH))
        .isInstanceOf(ReadingException.class);
  }

  @Test
  void a_temperature_difference_leaves_the_zero_point_out() {
    // NIST SP 811, B.8: a temperature interval of 9 degF is 5 degC.
    assertThat(Reading.parseDifference("9 degF", Quantity.TEMPERATURE, Unit.CELSIUS).value())
        .isCloseTo(5, within(1e-12));
    assertThat(Reading.parseDifference("3 mm", Quantity.LENGTH, Unit.MILLIMETRE).value())
        .isEqualTo(3);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89, 144, 233, 377, 610, 987, 1597})
  void any_line_at_all_is_a_finite_number_or_a_refusal(long seed) {
    String[] pieces = {
      "1",
      "23",
      "0",
      "456",
      "7890",
      ".",
      ",",
      "-",
      "+",
      " ",
      "\u00a0",
      "/",
      "e",
      "E",
      "½",
      "'",
      "\"",
      "mm",
      "in",
      "ft",
      "V",
      "mV",
      "ohm",
      "°",
      "degC",
      "%",
      "Mohm",
      "h",
      "min",
      "s",
      "x",
      "NaN",
      "Infinity",
      "\u0000",
      "\ud83d",
      "\ude00",
      "٣",
      "Ω",
      "−",
      "(",
      "e400",
      "e-400",
      "0x"
    };
    String[] good = {"", "", "24.3 V", "7 1/2 in", "7' 6\"", "190 mm", "1,5", "1 h 5 min", "8.2k"};
    Random random = new Random(seed);
    int understood = 0;
    for (int line = 0; line < Size.of(1_000, 4_000); line++) {
      StringBuilder typed = new StringBuilder(good[random.nextInt(good.length)]);
      for (int length = random.nextInt(5); length > 0; length--) {
        typed.insert(
            random.nextInt(typed.length() + 1),
            random.nextInt(20) == 0
                ? String.valueOf((char) random.nextInt(0x10000))
                : pieces[random.nextInt(pieces.length)]);
      }
      Quantity quantity = Quantity.values()[random.nextInt(Quantity.values().length)];
      Unit shown = Unit.of(quantity).get(random.nextInt(Unit.of(quantity).size()));
      try {
        Reading reading = Reading.parse(typed.toString(), quantity, shown);
        assertThat(reading.value()).as("seed %d: %s", seed, typed).isFinite();
        understood++;
      } catch (ReadingException refusal) {
        assertThat(refusal.getMessage()).as("seed %d: %s", seed, typed).matches("\\P{Cntrl}+[.?]");
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed + ": " + typed, e);
      }
    }
    assertThat(understood).as("seed %d", seed).isGreaterThan(Size.of(15, 100));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "about 4 mm",
        "About four mm",
        "approx. 4 mm",
        "ca 4 mm",
        "roughly 4",
        "around 4 mm"
      })
  void a_reading_may_be_said_to_be_about_right(String typed) {
    Reading reading = Reading.parse(typed, Quantity.LENGTH, Unit.MILLIMETRE);
    Reading exact = Reading.parse("4 mm", Quantity.LENGTH, Unit.MILLIMETRE);
    assertThat(reading.value()).isEqualTo(exact.value());
    assertThat(reading.typed()).isEqualTo(typed);
  }
}
