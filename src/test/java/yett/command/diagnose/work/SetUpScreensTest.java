package yett.command.diagnose.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.knowledge.SetUp;
import yett.testing.Shipped;

/** Steps that repeat are short the second time; their cautions and the confirmation stay. */
class SetUpScreensTest extends TechniciansCase {
  private static final SetUp LOCKED_OFF = Shipped.BASE.setUps().get("locked-off");

  private void enterTwice(String... lines) {
    enterTwice(List.of(), lines);
  }

  private void enterTwice(List<String> instead, String... lines) {
    Step.Enter step =
        new Step.Enter(
            LOCKED_OFF,
            Shipped.BASE.cautionsFor(LOCKED_OFF.hazards()),
            new Purpose(Purpose.Kind.OPEN, ""),
            false,
            instead);
    try (OpenCase open = typed.open()) {
      instead.forEach(id -> open.record(new Event.SetUpEntered(id, "")));
      Sitting sitting = typed.sitting(open, lines);
      SetUpScreens screens =
          new SetUpScreens(sitting, new Questions(sitting, new PromptRequests(sitting)));
      screens.enter(step);
      screens.enter(step);
    }
  }

  private int times(String words) {
    String plain = words.replaceAll("\\s+", " ");
    String screen = typed.screen().replaceAll("\\s+", " ");
    return (screen.length() - screen.replace(plain, "").length()) / plain.length();
  }

  @Test
  void what_was_done_before_is_a_line_a_step_and_still_in_force() {
    String last = LOCKED_OFF.enter().get(LOCKED_OFF.enter().size() - 1);
    enterTwice("", "done", "done");
    assertThat(times(last)).isEqualTo(1);
    assertThat(typed.screen().replaceAll("\\s+", " "))
        .contains(
            "As before: 1 People told; barriers on both sides; leaf where you need it. 2 Supply")
        .contains("Still in force: " + LOCKED_OFF.name().toLowerCase());
    assertThat(typed.stored())
        .containsExactly(
            new Event.SetUpEntered("locked-off", ""), new Event.SetUpEntered("locked-off", ""));
  }

  /** The cover stays off, but not the power. */
  @Test
  void what_a_set_up_replaces_is_no_longer_in_force() {
    enterTwice(List.of("cover-off"), "", "done", "done");
    assertThat(typed.screen()).doesNotContain("Still in force: cover off");
  }

  @Test
  void what_is_left_is_no_longer_in_force() {
    Step.Leave step = new Step.Leave(LOCKED_OFF, new Purpose(Purpose.Kind.CLOSING, ""));
    try (OpenCase open = typed.open()) {
      open.record(new Event.SetUpEntered("locked-off", ""));
      Sitting sitting = typed.sitting(open, "done", "done");
      SetUpScreens screens =
          new SetUpScreens(sitting, new Questions(sitting, new PromptRequests(sitting)));
      screens.leave(step);
      open.record(new Event.SetUpEntered("locked-off", ""));
      screens.leave(step);
    }
    assertThat(typed.screen())
        .contains("As before: 1 Tools counted; guards")
        .doesNotContain("in force");
  }

  @Test
  void a_question_mark_shows_it_step_by_step_with_its_cautions() {
    String last = LOCKED_OFF.enter().get(LOCKED_OFF.enter().size() - 1);
    enterTwice("", "done", "?", "done");
    assertThat(times(last)).isEqualTo(2);
    Shipped.BASE
        .cautionsFor(LOCKED_OFF.hazards())
        .forEach(c -> assertThat(times(c.avoid())).as(c.avoid()).isEqualTo(2));
  }

  /** Each on one line of 80, so that seven of them are taken in at a glance. */
  @Test
  void every_long_list_of_steps_has_a_short_one() {
    for (SetUp setUp : Shipped.BASE.setUps().values()) {
      if (setUp.id().equals("isolated")
          || setUp.id().equals("motor-off")
          || setUp.id().equals("out-of-use")) {
        continue; // entered once, after a danger or at the end
      }
      for (List<String> again : List.of(setUp.enterAgain(), setUp.leaveAgain())) {
        if (again.size() > 3) {
          assertThat(again).as(setUp.id()).hasSizeLessThan(9).allMatch(s -> s.length() <= 74);
        }
      }
    }
  }

  /** "back" is no sign that anybody has read them. */
  @Test
  void cautions_that_nobody_confirmed_come_in_full_again() {
    Step.Enter step =
        new Step.Enter(
            LOCKED_OFF,
            Shipped.BASE.cautionsFor(LOCKED_OFF.hazards()),
            new Purpose(Purpose.Kind.OPEN, ""));
    try (OpenCase open = typed.open()) {
      open.record(new Event.Noted("to be taken back"));
      Sitting sitting = typed.sitting(open, "note one", "", "done");
      SetUpScreens screens =
          new SetUpScreens(sitting, new Questions(sitting, new PromptRequests(sitting)));
      screens.enter(step);
      sitting.cautions().begin();
      screens.enter(step);
    }
    step.cautions().forEach(c -> assertThat(times(c.avoid())).as(c.avoid()).isEqualTo(2));
  }

  /** Nothing else on these screens says that the motor is cut off. */
  @Test
  void what_a_danger_left_in_force_is_named_from_the_first_set_up_on() {
    SetUp coverOff = Shipped.BASE.setUps().get("cover-off");
    Step.Enter step =
        new Step.Enter(
            coverOff,
            Shipped.BASE.cautionsFor(coverOff.hazards()),
            new Purpose(Purpose.Kind.CHECK, "input-lamps"));
    try (OpenCase open = typed.open()) {
      open.record(new Event.MadeSafe("moves-uncommanded", Optional.of(List.of("motor-off"))));
      Sitting sitting = typed.sitting(open, "", "done");
      new SetUpScreens(sitting, new Questions(sitting, new PromptRequests(sitting))).enter(step);
    }
    assertThat(typed.screen()).contains("Still in force: motor cut off after a danger");
  }

  @Test
  void only_a_word_confirms_it() {
    enterTwice("", "done", "", "yes", "done");
    assertThat(typed.stored()).hasSize(2);
    assertThat(typed.screen()).contains("Type done when it is done");
  }
}
