package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.quantity.Unit;
import yett.worksheet.catalogue.Catalogue;

class FillingTest {
  private static final Input VOLTS =
      Input.reading("volts", Unit.VOLT, "voltage").possible(0, 60).good(0, 30);
  private static final Input DEGREES = Input.reading("warmth", Unit.CELSIUS, "temperature");
  private static final Input TEETH = Input.whole("teeth", "teeth of the sprocket").possible(5, 60);
  private static final Input KIND =
      Input.choice("kind", "kind", new Choice("agm", "sealed (AGM)"), new Choice("wet", "flooded"));

  // Limits over √3, JCGM 100, 4.3.7.
  @ParameterizedTest
  @ValueSource(
      strings = {
        "24 V +- 0.2 V",
        "24 V ± 0.2",
        "24+-0.2",
        "24 V +/- 200 mV",
        "24 V + - 0.2 V",
        "24 V ± 0.83333333 %"
      })
  void limits_of_error_become_a_standard_uncertainty(String typed) {
    Given given = InputReader.read(VOLTS, typed);
    assertThat(given.value()).isEqualTo(24);
    assertThat(given.standardUncertainty()).isCloseTo(0.2 / Math.sqrt(3), within(1e-8));
  }

  @Test
  void limits_of_a_temperature_are_a_difference() {
    Given given = InputReader.read(DEGREES, "68 degF +- 9 degF");
    assertThat(given.value()).isCloseTo(20, within(1e-9));
    assertThat(given.standardUncertainty()).isCloseTo(5 / Math.sqrt(3), within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "24 ohm           | \"ohm\" is a resistance",
        "240 V            | 240 V is not possible here; the range is 0 V to 60 V",
        "24 V +-          | Nothing was typed",
        "24 V +- -1 V     | type +- once",
        "twenty           | There is no number",
      })
  void a_reading_that_cannot_be_taken(String typed, String complaint) {
    assertThatThrownBy(() -> InputReader.read(VOLTS, typed))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(complaint);
  }

  @Test
  void a_count_is_whole() {
    assertThat(InputReader.read(TEETH, "15").value()).isEqualTo(15);
    assertThatThrownBy(() -> InputReader.read(TEETH, "15.5")).hasMessageContaining("whole number");
    assertThatThrownBy(() -> InputReader.read(TEETH, "150")).hasMessageContaining("5 to 60");
  }

  @Test
  void a_choice_is_an_id_or_its_words_or_a_number_of_the_list() {
    for (String typed : new String[] {"wet", "WET", "flooded", "2"}) {
      assertThat(InputReader.read(KIND, typed).choice().id()).isEqualTo("wet");
    }
    assertThatThrownBy(() -> InputReader.read(KIND, "agn"))
        .hasMessage("\"agn\" is not a choice for kind. Maybe \"agm\". Known: agm, wet.");
  }

  @Test
  void names_of_inputs_are_known_or_refused_with_the_nearest() {
    Filling filling = new Filling(Catalogue.named("feeder drop").orElseThrow());
    filling.add("length", "20 m");
    assertThatThrownBy(() -> filling.add("length", "20 m")).hasMessage("length is given twice.");
    assertThatThrownBy(() -> filling.add("curent", "2 A"))
        .hasMessageContaining("Maybe \"current\"");
    assertThat(filling.missing().stream().map(Input::id))
        .containsExactly("supply", "current", "size");
    assertThatThrownBy(filling::solve).isInstanceOf(InputException.class);
  }

  @Test
  void what_lies_outside_the_validity_is_worked_out_but_said() {
    Worked worked =
        Worked.out(
            "feeder-voltage",
            "supply=120 V",
            "motor-current=8 A",
            "length=40 m",
            "size=12 AWG",
            "efficiency=40 %");
    assertThat(worked.solution().remarks()).hasSize(1);
    assertThat(worked.solution().remarks().get(0)).contains("40 %", "efficiency", "50 % to 95 %");
  }

  @Test
  void a_value_outside_a_formula_is_no_accident() {
    assertThatThrownBy(
            () ->
                Worked.out(
                    "feeder-drop",
                    "supply=24 V",
                    "current=2 A",
                    "length=9 m",
                    "size=2 AWG",
                    "strands=solid"))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("Try strands=stranded");
  }

  // The ways in which plates, drawings and people write a size.
  @ParameterizedTest
  @CsvSource({
    "#12, awg-12",
    "12, awg-12",
    "12 AWG, awg-12",
    "No. 12, awg-12",
    "12 ga, awg-12",
    "12 gauge, awg-12",
    "#10, awg-10",
    "1/0, awg-1-0",
    "#1/0, awg-1-0",
    "2.5, mm2-2-5",
    "2.5 mm², mm2-2-5",
    "2.5 sq mm, mm2-2-5",
    "25, mm2-25",
    "awg-12, awg-12",
  })
  void a_size_of_wire_is_known_by_the_names_it_has(String typed, String id) {
    assertThat(InputReader.read(input("feeder-drop", "size"), typed).choice().id()).isEqualTo(id);
  }

  @ParameterizedTest
  @ValueSource(strings = {"10", "4", "1"})
  void a_size_that_may_be_two_is_asked_back(String typed) {
    assertThatThrownBy(() -> InputReader.read(input("feeder-drop", "size"), typed))
        .hasMessage(
            "\"" + typed + "\" may be " + typed + " AWG or " + typed + " mm2. Type which one.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"#40", "40", "No. 40", "no 40"})
  void a_chain_is_known_by_its_number(String typed) {
    assertThat(InputReader.read(input("chain-sag", "chain"), typed).choice().id()).isEqualTo("40");
  }

  @Test
  void a_number_that_may_be_feet_or_metres_is_asked_back() {
    Filling filling = new Filling(Catalogue.named("chain-sag").orElseThrow());
    assertThatThrownBy(() -> filling.add("span", "16"))
        .isInstanceOf(InputException.class)
        .hasMessage("span: \"16\" has no unit: 16 m or 16 ft? Type it with its unit.");
    assertThatThrownBy(() -> filling.add("span", "16 +- 1")).hasMessageContaining("16 m or 16 ft");
    assertThatThrownBy(
            () -> new Filling(Catalogue.named("leaf-force").orElseThrow()).add("mass", "900"))
        .hasMessageContaining("900 kg or 900 lb");
    // 40 m is more than can be, so it can only be feet or a slip; the unit of the question is
    // meant.
    assertThatThrownBy(() -> filling.add("span", "40"))
        .hasMessageContaining("is not possible here");
    filling.add("span", "16 ft");
    filling.add("sag", "60");
    // Where the question has told its unit, a bare number is in it.
    filling.put(input("chain-sag", "span"), "16");
  }

  private static Input input(String sheet, String id) {
    return Catalogue.named(sheet).orElseThrow().inputs().stream()
        .filter(i -> i.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
