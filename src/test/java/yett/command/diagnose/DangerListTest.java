package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.desk.OpenCase;
import yett.interview.Answer;
import yett.interview.Ending;
import yett.interview.Event;
import yett.interview.Step;
import yett.knowledge.Role;
import yett.saying.DangerSayings;
import yett.testing.Shipped;

/** Words typed at the list of dangers are never taken for "no danger". */
class DangerListTest {
  @TempDir private Path folder;
  private TypedCase typed;

  @BeforeEach
  void begin() {
    typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN);
  }

  @AfterEach
  void end() {
    typed.close();
  }

  private Set<String> answers() {
    Set<String> answers = new TreeSet<>();
    for (Event event : typed.stored()) {
      if (event instanceof Event.Answered a && a.answer() instanceof Answer.Chosen chosen) {
        answers.add(a.check() + " " + chosen.outcome());
      }
    }
    return answers;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "none of the men can free him, he is trapped",
        "no power and bare wires",
        "nothing moves, smoke from the motor",
        "no, he can not get out",
        "no",
        "nothing",
        "none really",
        "unknown",
        "unknown 99999999999",
        "0 0",
        "0, 2",
        "12",
        "yes",
        "jkhgf"
      })
  void no_other_words_than_none_say_that_there_is_no_danger(String words) {
    typed.type(words);

    assertThat(answers()).isEmpty();
  }

  @Test
  void asking_for_the_dangers_and_going_back_takes_no_answer_away() {
    typed.type("0", "", "slow", "0", "danger", "back");
    Set<String> before = answers();

    assertThat(before).hasSize(6);
    assertThat(typed.stored())
        .filteredOn(Event.Retracted.class::isInstance)
        .hasSize(1); // that of looking again, and nothing else
  }

  @Test
  void a_case_that_was_left_begins_with_the_dangers_when_it_is_taken_up_again() {
    typed.type("2", "done", "close");
    assertThat(typed.stored()).contains(new Event.Closed(Ending.MADE_SAFE));
    try (OpenCase open = typed.open()) {
      open.record(new Event.TakenUp());
      assertThat(open.moment().step()).isInstanceOf(Step.AskDangers.class);
    }
  }

  @Test
  void what_cannot_be_told_is_no_danger_and_no_all_clear() {
    typed.type("unknown 2");

    assertThat(typed.stored())
        .contains(new Event.Answered("danger-leaf", new Answer.CannotTell()))
        .contains(new Event.Answered("danger-person", new Answer.Chosen("nobody")));
    assertThat(answers()).noneMatch(a -> a.startsWith("danger-leaf"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "none", " None "})
  void nought_or_none_say_it(String words) {
    typed.type(words);

    assertThat(answers()).contains("danger-person nobody", "danger-movement neither").hasSize(6);
  }

  @Test
  void what_words_tell_of_is_asked_back_and_stored_once_it_is_confirmed() {
    typed.type("none of the men can free him, he is trapped", "yes");

    assertThat(typed.screen()).contains("That may tell of danger", "Is it so? yes");
    assertThat(answers()).contains("danger-person hurt-or-trapped", "danger-leaf upright");
    assertThat(typed.screen()).contains("Somebody is struck or trapped");
    assertThat(typed.stored())
        .contains(new Event.Noted("none of the men can free him, he is trapped"));
  }

  @Test
  void numbers_stay_numbers() {
    typed.type("3 4");

    assertThat(answers()).contains("danger-burning burning", "danger-conductors bare-wires");
  }

  @ParameterizedTest
  @CsvSource({
    "'none of the men can free him, he is trapped', danger-person",
    "'no power and bare wires', danger-conductors",
    "'nothing moves, smoke from the motor', danger-burning",
    "'no he can not get out', danger-person",
    "'the gate has jumped off the rail', danger-leaf",
    "'my battery looks swollen', danger-battery",
    "'it smells burned', danger-burning",
    "'i got an electric shock from the fence', danger-conductors",
    "'the gate pushed on though it hit the van', danger-movement"
  })
  void the_right_danger_is_asked_back(String words, String check) {
    List<String> heard =
        new DangerSayings(Shipped.BASE).hear(words).stream().map(d -> d.check().id()).toList();

    assertThat(heard).contains(check);
  }
}
