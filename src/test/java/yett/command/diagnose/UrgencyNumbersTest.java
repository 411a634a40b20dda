package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.Event;

/** Whoever takes calls knows the numbers of the urgency list by heart. */
class UrgencyNumbersTest extends CallersCase {
  @Test
  void what_does_not_apply_leaves_a_gap() {
    typed.type("Stays closed and does not open", "0", "", "3", "5", "0");
    assertThat(typed.screen())
        .contains(" 5 Has work stopped", "Type 0 for none, or 1, 2, 5 separated by spaces.");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("goods-held-up")));
  }

  @Test
  void a_list_with_all_has_the_same_numbers() {
    typed.type("The chain hangs down or has come off", "0", "", "5", "0");
    assertThat(typed.screen()).contains(" 5 Has work stopped", " 4 Do children");
    assertThat(typed.stored()).contains(new Event.Pressed(List.of("goods-held-up")));
  }
}
