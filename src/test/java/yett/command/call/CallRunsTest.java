package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.CallersCase;
import yett.desk.OpenCase;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;

/** What is asked of a caller who has put something right, and how urgent it is. */
class CallRunsTest extends CallersCase {
  @BeforeEach
  void dead() {
    typed.begin("it is dead", "0", "", "1", "0", "0");
  }

  private void switchedOn() {
    try (OpenCase open = typed.open()) {
      open.record(
          new Event.Answered("breaker-position", new Answer.Chosen("tripped")),
          new Event.Repaired("switch-on-once", true));
    }
  }

  /** The try after a repair is one run each way, and that is what the proof asks for. */
  @Test
  void a_run_that_was_seen_is_not_asked_for_again() {
    switchedOn();
    typed.type("1");
    assertThat(typed.stored())
        .endsWith(
            new Event.Retested(true),
            new Event.Answered("usual-run", new Answer.Chosen(Check.PASS)));
    assertThat(typed.screen()).contains("that counts", "Solved on the telephone");
  }

  /** What was no danger before may be one since the power came back. */
  @Test
  void a_new_complaint_that_tells_of_danger_is_asked_about() {
    switchedOn();
    typed.type("3", "moves-alone", "yes", "done");
    assertThat(typed.screen())
        .contains("That may mean danger", "You at the desk", "a number to ring back");
    assertThat(typed.stored())
        .contains(
            Event.Retested.left(List.of(), List.of("moves-alone")),
            new Event.Answered("danger-movement", new Answer.Chosen("moved-by-itself")));
  }
}
