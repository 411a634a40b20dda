package yett.command.diagnose.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.answer.TwoReadings;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.testing.Shipped;

/** Two answers to one check, such as for opening and for closing. */
class ColumnsTest extends TechniciansCase {
  private static final Check CURRENT = check("running-current");
  private static final Check OUTPUT = check("motor-output-voltage");

  /** 1 has no columns; a, b, c ... of 2 are no-never, sometimes, same-place, always. */
  private static final List<Check> LOOKS =
      Stream.of("response", "turns-back", "noise-kind").map(ColumnsTest::check).toList();

  private static Check check(String id) {
    return Shipped.BASE.checks().get(id);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2b/a            | sometimes  | opening",
        "2b/             | sometimes  | opening",
        "2a/c            | same-place | closing",
        "2/c             | same-place | closing",
        "2b/c            | same-place | opening closing",
        "2a/a            | no-never   | ''",
        "2 b/a           | sometimes  | opening",
        "2c closing      | same-place | closing",
        "2c only closing | same-place | closing",
        "2 opening always | always    | opening",
        "2c              | same-place | ''",
      })
  void a_look_is_answered_for_each_column(String line, String outcome, String columns) {
    RoundLine.Heard heard = RoundLine.read(LOOKS, line);
    assertThat(heard.complaints()).isEmpty();
    assertThat(heard.said().get(1)).contains(new Answer.Chosen(outcome));
    assertThat(heard.columns().getOrDefault(1, Set.of()))
        .containsExactlyInAnyOrderElementsOf(
            columns.isEmpty() ? Set.of() : Set.of(columns.split(" ")));
  }

  @Test
  void a_column_without_a_letter_leaves_open_what_differs() {
    RoundLine.Heard heard = RoundLine.read(LOOKS, "2 closing");
    assertThat(heard.said().get(1)).isEmpty();
    assertThat(heard.columns().get(1)).containsExactly("closing");
  }

  @Test
  void what_differs_in_both_columns_is_kept_in_words() {
    assertThat(RoundLine.read(LOOKS, "2b/c").remarks().get(1))
        .isEqualTo(
            "opening: "
                + LOOKS.get(1).outcomes().get(1).text()
                + ", closing: "
                + LOOKS.get(1).outcomes().get(2).text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1b/a", "2b/z", "7b/a"})
  void columns_that_are_not_there_are_refused(String line) {
    RoundLine.Heard heard = RoundLine.read(LOOKS, line);
    assertThat(heard.complaints()).singleElement().asString().contains("is not understood");
    assertThat(heard.said().values()).allMatch(Optional::isEmpty);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "23.9/0.4",
        "23.9 V / 0.4 V",
        "23.9/0.4 V",
        "23.9 V opening, 0.4 V closing",
        "closing 0.4 V; opening 23.9 V",
        "open 23.9 and close 0.4",
      })
  void two_readings_are_read_in_the_order_of_the_card(String line) {
    TwoReadings two = TwoReadings.of(OUTPUT, line).orElseThrow();
    assertThat(two.first().value()).isEqualTo(23.9);
    assertThat(two.second().value()).isEqualTo(0.4);
    assertThat(two.judged().value()).isEqualTo(0.4);
    assertThat(two.unusual(Optional.empty())).containsExactly("closing");
  }

  @ParameterizedTest
  @ValueSource(strings = {"23.9", "23.9 V", "23.9 and 0.4", "opening 24 V, opening 23 V", "24/x"})
  void anything_else_is_no_two_readings(String line) {
    assertThat(TwoReadings.of(OUTPUT, line)).isEmpty();
  }

  @Test
  void of_two_currents_the_higher_counts() {
    assertThat(TwoReadings.of(CURRENT, "4.5/9 A").orElseThrow().judged().value()).isEqualTo(9.0);
    assertThat(TwoReadings.of(CURRENT, "9/4.5 A").orElseThrow().judged().value()).isEqualTo(9.0);
  }

  /** No steel tape in millimeters shows fractions: 6/14 mm is not 0.43 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"6/14 mm", "6/14", "2/14 mm", "14/6 mm"})
  void whole_numbers_with_a_slash_are_two_readings(String line) {
    assertThat(TwoReadings.of(check("nose-and-catch"), line).orElseThrow().judged().value())
        .isEqualTo(14.0);
  }

  /** "1/2 in" is half an inch, not two readings. */
  @Test
  void a_fraction_is_one_reading() {
    assertThat(TwoReadings.of(check("sprocket-offset"), "1/2 in")).isEmpty();
    assertThat(TwoReadings.of(check("sprocket-offset"), "12 mm / 3 mm")).isPresent();
  }

  /** What is stored for two readings at the prompt of a check. */
  private Optional<Answer> answer(Check check, String line) {
    try (OpenCase open = typed.open()) {
      Sitting sitting = typed.sitting(open);
      return new Questions(sitting, new PromptRequests(sitting)).answer(check, line);
    }
  }

  @Test
  void two_readings_are_kept_and_say_which_way_it_goes_wrong() {
    assertThat(answer(OUTPUT, "23.9/0.4").flatMap(Answer::reading).map(Answer.Read::value))
        .contains(0.4);
    assertThat(typed.stored())
        .contains(
            new Event.Noted("opening 23.9 V, closing 0.4 V", Optional.of(OUTPUT.id())),
            new Event.Answered("which-way", new Answer.Chosen("closing")));
  }

  @Test
  void two_usual_readings_say_nothing_of_a_way() {
    answer(OUTPUT, "23.9/23.4");
    assertThat(typed.stored()).noneMatch(ColumnsTest::isWhichWay);
  }

  private static boolean isWhichWay(Event event) {
    return event instanceof Event.Answered a && a.check().equals("which-way");
  }

  @Test
  void a_round_with_columns_says_how_to_answer_them_and_which_way_it_goes_wrong() {
    typed.round(LOOKS, "2a/b, 3b closing");
    assertThat(typed.screen())
        .contains("For 2, 3, opening and closing can differ: 3b/a is b opening only");
    assertThat(typed.stored())
        .contains(
            new Event.Answered("turns-back", new Answer.Chosen("sometimes")),
            new Event.Answered("noise-kind", new Answer.Chosen("scrape")),
            new Event.Answered("which-way", new Answer.Chosen("closing")));
  }

  @Test
  void what_differs_in_both_columns_goes_wrong_both_ways_alike() {
    typed.round(LOOKS, "2a/b, 3b opening");
    assertThat(typed.stored())
        .contains(new Event.Answered("which-way", new Answer.Chosen("alike")));
  }

  @Test
  void a_look_not_told_apart_says_nothing_of_a_way() {
    typed.round(LOOKS, "2b");
    assertThat(typed.stored()).noneMatch(ColumnsTest::isWhichWay);
  }

  @Test
  void the_columns_answer_the_look_that_asks_which_way() {
    typed.round(List.of(LOOKS.get(1), check("which-way")), "1a/b");
    assertThat(typed.stored())
        .contains(new Event.Answered("which-way", new Answer.Chosen("closing")));
  }

  @Test
  void what_was_said_of_the_way_itself_stays() {
    typed.round(List.of(LOOKS.get(1), check("which-way")), "1a/b, 2c");
    assertThat(typed.stored())
        .contains(new Event.Answered("which-way", new Answer.Chosen("opening")))
        .doesNotContain(new Event.Answered("which-way", new Answer.Chosen("closing")));
  }
}
