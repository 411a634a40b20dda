package yett.command.diagnose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.interview.site.SiteFacts;
import yett.knowledge.ShippedKnowledge;
import yett.knowledge.SiteQuestion;

class SiteLineTest {
  private static final List<SiteQuestion> QUESTIONS =
      new SiteFacts(ShippedKnowledge.ruleBase()).questions(Map.of());

  private final SiteLine page = new SiteLine(QUESTIONS, QUESTIONS.size());

  @Test
  void one_line_changes_several() {
    assertThat(said("6 m, no loops, 120 V"))
        .isEqualTo(Map.of("opening", "6 m", "loops", "none", "supply-volts", "120"));
    assertThat(page.read("6 m, no loops, 120 V").unclear()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          20 ft 4 in            | opening            | 20 ft 4 in
          free run 5 m          | chain-span         | 5 m
          230V                  | supply-volts       | 230
          120v                  | supply-volts       | 120
          2.5mm2                | feeder-size        | mm2-2-5
          350 kg                | leaf-mass          | 350 kg
          -4 C                  | usual-temperature  | -4 C
          solar                 | supply             | solar
          cantilever            | support            | cantilever
          no marker             | marker             | none
          no edges              | edges              | none
          two beams             | beams              | two
          boarded               | leaf-face          | boarded
          single-phase motor    | motor              | ac
          three-phase motor     | motor              | ac
          AC motor              | motor              | ac
          batteries none        | batteries          | none
          keypad fitted         | keypad             | fitted
          6.2 m chain span      | chain-span         | 6.2 m
          2 beams               | beams              | two
          3 beams               | beams              | two
          1 beam                | beams              | one
          two photo eyes        | beams              | two
          one photo-eye         | beams              | one
          no photocell          | beams              | none
          V-track               | support            | track
          no batteries          | batteries          | none
          12 C at the operator  | usual-temperature  | 12 C
          temperature -3        | usual-temperature  | -3
          temperature -3 C      | usual-temperature  | -3 C
          4 mm2                 | feeder-size        | mm2-4
          feeder 4 mm2          | feeder-size        | mm2-4
          two loops             | loops              | fitted
          3 loops               | loops              | fitted
          two edges             | edges              | fitted
          with loops            | loops              | fitted
          exit loop and safety loop | loops          | fitted
          free exit loop        | loops              | fitted
          one exit loop         | loops              | fitted
          no exit loop          | loops              | none
          marker on the chain   | marker             | fitted
          no marker on the chain | marker            | none
          has a keypad          | keypad             | fitted
          there is a timer      | timer              | fitted
          loops yes             | loops              | fitted
          4 years old batteries | battery-age        | 4 years
          4-year-old batteries  | battery-age        | 4 years
          batteries 4 years old | battery-age        | 4 years
          """)
  void a_part_names_its_line(String part, String question, String answer) {
    assertThat(said(part)).isEqualTo(Map.of(question, answer));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          leaf-mass  | 420 kg    | 420 kg
          chain-span | 6.2 m     | 6.2 m
          chain-span | : 21 ft   | 21 ft
          supply     | solar     | solar
          loops      | no        | none
          """)
  void the_number_of_a_line_says_which_it_is(String question, String said, String answer) {
    int number = 1 + QUESTIONS.stream().map(SiteQuestion::id).toList().indexOf(question);
    assertThat(said(number + (said.startsWith(":") ? "" : " ") + said))
        .isEqualTo(Map.of(question, answer));
  }

  @Test
  void a_number_that_belongs_to_the_reading_is_no_line() {
    assertThat(said("1 1/2 m")).isEqualTo(Map.of("opening", "1 1/2 m"));
  }

  @Test
  void readings_without_a_comma_between_them_are_all_taken_or_none() {
    assertThat(said("feeder 40 m 4 mm2"))
        .isEqualTo(Map.of("feeder-length", "40 m", "feeder-size", "mm2-4"));
    assertThat(said("batteries 2 years 7 Ah"))
        .isEqualTo(Map.of("battery-age", "2 years", "battery-capacity", "7 Ah"));
    assertThat(said("2 loops 3 edges")).isEqualTo(Map.of("edges", "fitted", "loops", "fitted"));
    assertThat(said("feeder 40 m 3 mm2")).isEmpty();
    assertThat(page.read("feeder 3 mm2").unclear()).containsExactly("feeder 3 mm2");
    assertThat(page.read("b").unclear()).containsExactly("b");
  }

  @ParameterizedTest
  @CsvSource({"99 420 kg", "13 12 V"})
  void a_line_that_is_not_there_or_has_no_such_answer_is_told(String part) {
    assertThat(page.read(part)).isEqualTo(new SiteLine.Heard(Map.of(), Set.of(), List.of(part)));
  }

  @ParameterizedTest
  @CsvSource({
    "banana",
    "6",
    "fitted",
    "yes",
    "no",
    "loops",
    "batteries",
    "radio",
    "with batteries"
  })
  void what_fits_nothing_or_many_lines_is_told(String part) {
    assertThat(page.read(part)).isEqualTo(new SiteLine.Heard(Map.of(), Set.of(), List.of(part)));
  }

  @Test
  void what_the_trade_calls_a_gate_without_batteries_or_marker_is_understood() {
    assertThat(said("6 m, mains only, limit switches"))
        .isEqualTo(Map.of("opening", "6 m", "batteries", "none", "limits-by", "switches"));
  }

  @ParameterizedTest
  @CsvSource({"no edges or loops", "no edges and no loops", "without edges nor loops"})
  void one_no_may_stand_for_several(String part) {
    assertThat(said(part)).isEqualTo(Map.of("edges", "none", "loops", "none"));
  }

  /** Of a page that asks for something else; a name says what is meant. */
  @Test
  void a_reading_without_a_name_that_fits_no_line_of_the_page_is_a_guess() {
    List<SiteQuestion> openingFirst =
        Stream.concat(
                QUESTIONS.stream().filter(q -> q.id().equals("opening")),
                QUESTIONS.stream().filter(q -> !q.id().equals("opening")))
            .toList();
    SiteLine first = new SiteLine(openingFirst, 1);
    assertThat(first.read("1c").guessed()).hasSize(1);
    assertThat(first.read("6 m").guessed()).isEmpty();
    assertThat(first.read("temperature 12 C").guessed()).isEmpty();
  }

  private Map<String, String> said(String line) {
    Map<String, String> said = new TreeMap<>();
    page.read(line).said().forEach((q, a) -> said.put(q.id(), a));
    return said;
  }
}
