package yett.command.diagnose.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.TypedCase;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.record.CaseRecord;
import yett.testing.Shipped;

/** A question of which several answers may be true. */
class SeveralTrueTest extends TechniciansCase {
  private static final Event RAIN_AND_HEAT =
      new Event.Answered("when-it-fails", new Answer.Chosen("hot", List.of("rain")));
  private static final String WORDS =
      "in rain, or after it, and also when it is hot, or after many runs";

  @BeforeEach
  void toTheFirstCheck() {
    typed.begin("0", "", "4", "0");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 and 4", "4, 2", "2 4", "rain and hot"})
  void it_says_so_and_takes_several(String line) {
    typed.type("ask when-it-fails", line, "save");
    assertThat(typed.screen()).contains("several may be true").contains("Understood as: " + WORDS);
    assertThat(typed.stored()).contains(RAIN_AND_HEAT);
  }

  @Test
  void the_ordinary_answer_goes_with_no_other() {
    typed.type("ask when-it-fails", "1 and 2", "save");
    assertThat(typed.screen()).contains("goes with no other answer. Name it alone, or only the");
    assertThat(typed.stored()).noneMatch(e -> isAbout(e));
  }

  private static boolean isAbout(Event event) {
    return event instanceof Event.Answered a && a.check().equals("when-it-fails");
  }

  /** "when it rains" is in no answer; "when it is hot" is. Both are read back before they count. */
  @Test
  void words_that_mean_several_are_read_back_together() {
    typed.type("ask when-it-fails", "whenever it rains and when it is hot", "yes", "save");
    assertThat(typed.screen()).contains(WORDS.substring(1) + ". Right?");
    assertThat(typed.stored()).contains(RAIN_AND_HEAT);
  }

  @Test
  void all_are_shown_when_they_are_corrected_and_others_may_take_their_place() {
    typed.type("ask when-it-fails", "2 and 4", "correct when it fails", "2 and 8", "save");
    assertThat(typed.screen()).contains("(" + WORDS + ")");
    assertThat(typed.stored())
        .filteredOn(Event.Corrected.class::isInstance)
        .extracting(e -> ((Event.Corrected) e).answer())
        .containsExactly(new Answer.Chosen("wind", List.of("rain")));
  }

  @Test
  void what_is_told_later_is_added_to_what_was_told_before() {
    typed.type("tell it fails in rain", "1", "yes", "tell it fails when it is hot", "1", "yes");
    assertThat(typed.stored().stream().filter(SeveralTrueTest::isAbout).toList())
        .endsWith(RAIN_AND_HEAT);
  }

  @Test
  void belief_why_and_the_record_tell_all() {
    typed.type("ask when-it-fails", "2 and 4", "belief all", "save");
    assertThat(typed.screen().split(WORDS, -1).length).isGreaterThan(2);
    try (OpenCase open = typed.open()) {
      assertThat(new CaseRecord(Shipped.BASE).markdown(open.moment(), "1", "Net loft"))
          .contains(WORDS);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bd             | dirty, bent",
        "b and d        | dirty, bent",
        "bent and dirty | dirty, bent",
        "c              | blocked",
        "a              | clean",
        "ab             | ''",
        "a and b        | ''",
      })
  void a_look_of_a_round_takes_letters_together(String line, String ids) {
    assertThat(
            LookAnswers.of(Shipped.BASE.checks().get("track-look"), line).answer().stream()
                .flatMap(a -> a.choices().stream())
                .collect(Collectors.joining(", ")))
        .isEqualTo(ids);
  }

  /** No danger, no name, the complaint, nothing urgent, nothing lately; then what is asked for. */
  @Test
  void a_caller_is_told_that_there_may_be_more_than_one_answer() {
    try (TypedCase call = new TypedCase(folder.resolve("call"), Shipped.QUICK, Role.CALLER)) {
      call.type("it scrapes", "0", "", "1", "0", "0", "0", "ask noise-kind", "2 and 5", "save");
      assertThat(call.screen())
          .contains(
              "What does it sound like when the gate runs? There may be more than one answer.");
      assertThat(call.stored())
          .contains(new Event.Answered("noise-kind", new Answer.Chosen("bang", List.of("scrape"))));
    }
  }
}
