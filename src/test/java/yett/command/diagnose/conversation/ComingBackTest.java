package yett.command.diagnose.conversation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import yett.casebook.NewEvent;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.danger.DangerList;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.step.Step;
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

  /** A smell or a crack that came since is seen by whoever looks, not by whoever looked. */
  @Test
  void another_role_looks_for_dangers_again_though_nothing_is_in_force() {
    comeBackAs(Role.ELECTRICIAN);
    assertThat(typed.stored()).containsExactly(new Event.Returned());
    assertThat(typed.screen()).contains("A technician answered until now");
  }

  @Test
  void nothing_is_asked_where_nothing_is_in_force() {
    comeBack();
    assertThat(typed.screen()).isEmpty();
    assertThat(typed.stored()).isEmpty();
  }

  /** The list of dangers pushes what was said before it off a small window. */
  @Test
  void how_the_gate_was_left_stands_above_the_dangers() {
    lockedOff();
    comeBackAs(Role.ELECTRICIAN);
    try (OpenCase open = typed.open(Role.ELECTRICIAN)) {
      Sitting sitting = typed.sitting(open, "0");
      new DangerList(sitting, new PromptRequests(sitting))
          .ask((Step.AskDangers) open.moment().step());
    }
    assertThat(typed.screen())
        .containsPattern(
            "prove dead again, before anything else\\. Still in force:? +locked off, every supply"
                + " off, proved dead .*Is any of this true");
  }

  @Test
  void whoever_takes_over_goes_through_the_states_as_well() {
    lockedOff();
    comeBackAs(Role.ELECTRICIAN);
    assertThat(typed.stored()).contains(new Event.Returned());
    assertThat(typed.screen())
        .contains("A technician answered until now", "Then go through it step by step");
  }

  private void comeBackAs(Role role) {
    try (OpenCase open = typed.open(role)) {
      Sitting sitting = typed.sitting(open);
      new ComingBack(sitting, new Questions(sitting, new PromptRequests(sitting))).ask();
    }
  }
}
