package yett.command.diagnose.conversation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.answer.RareAnswer;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Whoever saves a case in the middle of the work hears how the gate stands. */
class LeftBehindTest extends TechniciansCase {
  private Optional<String> left(Role role, Event... events) {
    try (OpenCase open = typed.open(role)) {
      for (Event event : events) {
        open.record(event);
      }
      return new LeftBehind(Shipped.BASE).of(open.moment()).map(Object::toString);
    }
  }

  @Test
  void a_gate_on_which_nobody_has_worked_stands_as_it_was_found() {
    assertThat(left(Role.TECHNICIAN)).isEmpty();
    assertThat(left(Role.CALLER, new Event.Repaired("end-hold-open", true))).isEmpty();
  }

  @Test
  void an_open_live_cabinet_is_named() {
    assertThat(left(Role.TECHNICIAN, new Event.SetUpEntered("cover-off", "")).orElseThrow())
        .contains("like this: cover off, power still on", "not proved", "nobody runs it");
  }

  @Test
  void a_gate_that_was_mended_and_not_proved_is_live() {
    assertThat(left(Role.TECHNICIAN, new Event.Repaired("clean-beam", true)).orElseThrow())
        .contains("with its power on", "not proved");
  }

  @Test
  void a_gate_that_is_locked_off_and_barred_is_left_right() {
    assertThat(
            left(
                Role.TECHNICIAN,
                new Event.SetUpEntered("locked-off", ""),
                new Event.SetUpEntered("out-of-use", "")))
        .isEmpty();
  }

  @Test
  void save_says_so() {
    try (OpenCase open = typed.open()) {
      open.record(new Event.SetUpEntered("cover-off", ""));
    }
    typed.type("save");
    assertThat(typed.screen()).contains("Saved.", "The gate is left like this: cover off");
  }

  /** Nobody is asked whether they are sure that something does not stop. */
  @Test
  void a_failed_proof_is_not_doubted() {
    try (OpenCase open = typed.open()) {
      Sitting sitting = typed.sitting(open, "no");
      var proof = Shipped.BASE.checks().get("stop-button-works");
      var fail = new Answer.Chosen("fail");
      assertThat(sitting.open().interview().hear(sitting.moment(), proof, fail).orElseThrow())
          .as("it is unlikely")
          .matches(Interview.Hearing::unlikely);
      assertThat(new RareAnswer(sitting).isMeant(sitting.moment(), proof, fail)).isTrue();
    }
  }

  @Test
  void after_a_failed_stop_button_nobody_runs_the_gate_and_the_screen_says_so() {
    assertThat(afterFailed("stop-button-works")).contains("Nobody runs the gate, not even while");
    assertThat(afterFailed("limits-hold")).contains("The gate is out of use until this proof");
  }

  private String afterFailed(String proof) {
    try (OpenCase open = typed.open()) {
      open.record(new Event.Answered(proof, new Answer.Chosen("fail")));
      Sitting sitting = typed.sitting(open, "1");
      new Decisions(sitting, new Questions(sitting, new PromptRequests(sitting)))
          .failedProof(new Step.DecideFailedProof(Shipped.BASE.checks().get(proof)));
      String shown = typed.screen();
      open.record(new Event.Repaired("clean-beam", true));
      return shown.substring(shown.lastIndexOf("A proof failed"));
    }
  }
}
