package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** "Enter if all is right" stands below what is to be right. */
class SiteFormTest extends TechniciansCase {
  private static final String PAGE = "Taken as usual:";

  @Test
  void the_gate_is_shown_again_after_what_was_told_in_between() {
    typed.type("0", "since the chain was changed yesterday an alarm sounds", "1", "", "");
    assertThat(typed.screen().split(PAGE, -1)).hasSize(3);
  }

  @Test
  void a_line_that_is_changed_is_told_by_itself() {
    typed.type("0", "6 m");
    assertThat(typed.screen().split(PAGE, -1)).hasSize(2);
  }
}
