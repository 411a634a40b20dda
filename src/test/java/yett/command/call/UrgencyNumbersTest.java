package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.command.diagnose.CallersCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;

/** Whoever takes calls knows the numbers of the urgency list by heart. */
class UrgencyNumbersTest extends CallersCase {
  @Test
  void what_does_not_apply_leaves_a_gap() {
    typed.type("Stays closed and does not open", "0", "", "3", "5", "0");
    assertThat(typed.screen())
        .contains(" 5 Has work stopped", "Type 0 for none, or 1, 2, 5, 6 separated by spaces.");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("goods-held-up")));
  }

  @Test
  void a_list_with_all_has_the_same_numbers() {
    typed.type("The chain hangs down or has come off", "0", "", "5", "0");
    assertThat(typed.screen()).contains(" 5 Has work stopped", " 4 Do children");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("goods-held-up")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"can wait", "it can wait till Monday", "no hurry", "it's not urgent"})
  void what_can_wait_is_none_of_them(String words) {
    typed.type("Stays closed and does not open", "0", "", words, "0");
    assertThat(typed.screen()).contains("Taken as 0: it can wait.");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of()));
  }

  @Test
  void today_is_one_of_them() {
    typed.type("Stays closed and does not open", "0", "", "today", "0");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("needed-today")));
    assertThat(sheet().urgency().level()).isEqualTo("today");
  }

  @Test
  void words_are_read_back_and_count_as_their_number() {
    typed.type("Opens, but does not close again", "0", "", "the site stands open", "yes", "0");
    assertThat(typed.screen()).contains("The site stands open. Right?", "Have somebody watch");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("site-open")));
  }

  @Test
  void what_is_not_confirmed_is_asked_again() {
    typed.type("Opens, but does not close again", "0", "", "the site stands open", "no", "5", "0");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("goods-held-up")));
  }

  /** Whoever is shut in is asked about first, and not again: it is urgent by that alone. */
  @Test
  void nobody_can_get_out_is_a_danger_and_is_not_asked_again() {
    typed.type(
        "Stays closed and does not open", "0", "", "nobody can get out", "yes", "done", "", "5");
    assertThat(typed.stored())
        .contains(
            new Event.Answered("danger-shut-in", new Answer.Chosen("no-help")),
            new Event.Pressed(List.of("goods-held-up")));
    assertThat(typed.screen()).containsOnlyOnce("Is anybody shut in");
    assertThat(sheet().urgency().level()).isEqualTo("at once");
  }
}
