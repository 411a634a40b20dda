package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.casebook.NewEvent;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.interview.EventText;
import yett.knowledge.Role;

/** Whoever goes on with a case is asked whether the gate stands as it was left. */
class ComingBackTest extends TechniciansCase {
  private void lockedOff() {
    try (OpenCase open = typed.open()) {
      open.record(new Event.SetUpEntered("locked-off", ""));
    }
  }

  private void comeBack(String... lines) {
    try (OpenCase open = typed.open()) {
      Sitting sitting = typed.sitting(open, lines);
      new ComingBack(sitting, new Questions(sitting, new PromptRequests(sitting))).ask();
    }
  }

  @Test
  void whoever_never_went_away_goes_on() {
    lockedOff();
    comeBack("yes");
    assertThat(typed.screen())
        .contains("with this in force: locked off, every supply off, proved dead");
    assertThat(typed.stored()).doesNotContain(new Event.Returned());
  }

  @Test
  void enter_is_no_yes() {
    lockedOff();
    comeBack("", "no");
    assertThat(typed.stored()).contains(new Event.Returned());
  }

  @Test
  void after_an_hour_nobody_is_asked_to_remember() {
    typed
        .casebook()
        .append(
            typed.id(),
            1,
            new NewEvent(
                Instant.now().minusSeconds(3600),
                Role.TECHNICIAN.word(),
                "set-up-entered",
                EventText.write(new Event.SetUpEntered("locked-off", ""))));
    comeBack();
    assertThat(typed.stored()).contains(new Event.Returned());
    assertThat(typed.screen()).contains("prove dead again");
  }

  @Test
  void nothing_is_asked_where_nothing_is_in_force() {
    comeBack();
    assertThat(typed.screen()).isEmpty();
    assertThat(typed.stored()).isEmpty();
  }

  /** A role that comes to a case in the middle of the work has not looked for itself. */
  @Test
  void whoever_takes_over_looks_for_dangers_first() {
    comeBackAs(Role.ELECTRICIAN);
    assertThat(typed.stored()).containsExactly(new Event.DangersAgain());
  }

  @Test
  void whoever_takes_over_goes_through_the_states_as_well() {
    lockedOff();
    comeBackAs(Role.ELECTRICIAN);
    assertThat(typed.stored()).contains(new Event.Returned(), new Event.DangersAgain());
  }

  @Test
  void whoever_was_away_looks_for_dangers_again() {
    lockedOff();
    comeBack("no");
    assertThat(typed.stored()).contains(new Event.Returned(), new Event.DangersAgain());
  }

  @Test
  void a_caller_is_asked_by_the_rules_of_calls() {
    comeBackAs(Role.CALLER);
    assertThat(typed.stored()).isEmpty();
  }

  private void comeBackAs(Role role, String... lines) {
    try (OpenCase open = typed.openAs(Optional.of(role))) {
      Sitting sitting = typed.sitting(open, lines);
      new ComingBack(sitting, new Questions(sitting, new PromptRequests(sitting))).ask();
    }
  }

  /** Work at the mains is for those who say each time that they may do it. */
  @Test
  void nobody_answers_as_an_electrician_unasked() {
    try (OpenCase open = typed.openAs(Optional.of(Role.ELECTRICIAN))) {
      open.record(new Event.Noted("the mains was read"));
    }
    try (OpenCase open = typed.openAs(Optional.empty())) {
      assertThat(open.role()).isEqualTo(Role.TECHNICIAN);
    }
    try (OpenCase open = typed.openAs(Optional.of(Role.TRAINEE))) {
      open.record(new Event.Noted("by a trainee"));
    }
    try (OpenCase open = typed.openAs(Optional.empty())) {
      assertThat(open.role()).isEqualTo(Role.TRAINEE);
    }
  }
}
