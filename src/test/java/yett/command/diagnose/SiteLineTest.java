package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.interview.SiteFacts;
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
          batteries none        | batteries          | none
          keypad fitted         | keypad             | fitted
          6.2 m chain span      | chain-span         | 6.2 m
          12 C at the operator  | usual-temperature  | 12 C
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

  @ParameterizedTest
  @CsvSource({"99 420 kg", "13 12 V"})
  void a_line_that_is_not_there_or_has_no_such_answer_is_told(String part) {
    assertThat(page.read(part)).isEqualTo(new SiteLine.Heard(Map.of(), List.of(part)));
  }

  @ParameterizedTest
  @CsvSource({"banana", "6", "fitted", "yes", "no", "loops"})
  void what_fits_nothing_or_many_lines_is_told(String part) {
    assertThat(page.read(part)).isEqualTo(new SiteLine.Heard(Map.of(), List.of(part)));
  }

  private Map<String, String> said(String line) {
    Map<String, String> said = new TreeMap<>();
    page.read(line).said().forEach((q, a) -> said.put(q.id(), a));
    return said;
  }
}
