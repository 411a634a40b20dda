package yett.command.diagnose.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.command.diagnose.correction.Corrections;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.CaseLeftException;
import yett.command.diagnose.sitting.Sitting;
import yett.desk.OpenCase;
import yett.interview.event.Event;
import yett.knowledge.Repair;
import yett.testing.Shipped;

class RepairingTest extends TechniciansCase {
  private static Repairing repairing(Sitting sitting) {
    PromptRequests wishes = new PromptRequests(sitting);
    return new Repairing(sitting, wishes, new Questions(sitting, wishes));
  }

  private String tried(String repair) {
    try (OpenCase open = typed.open()) {
      open.record(
          new Event.Complained(List.of("runs-then-stops")), new Event.Repaired(repair, true));
      Sitting sitting = typed.sitting(open, "1");
      repairing(sitting).retest();
    }
    return typed.screen();
  }

  private List<Event> refused(String... lines) {
    Repair repair = Shipped.BASE.repairs().get("correct-supply-setting");
    try (OpenCase open = typed.open()) {
      Sitting sitting = typed.sitting(open, lines);
      PromptRequests wishes = new PromptRequests(sitting);
      try {
        new DoneOrNot(sitting, wishes, new Questions(sitting, wishes)).ask(repair);
      } catch (CaseLeftException e) {
        // they left
      }
    }
    return typed.stored();
  }

  private static Event.Repaired not(String why) {
    return new Event.Repaired("correct-supply-setting", false, why);
  }

  /** Whoever comes next may have brought the part. */
  @Test
  void why_a_repair_could_not_be_done_is_asked_and_kept() {
    assertThat(refused("cannot", "mains not read, no electrician here"))
        .containsExactly(not("mains not read, no electrician here"));
    assertThat(typed.screen()).contains("Why not? A few words, or Enter");
  }

  @Test
  void the_reason_may_stand_behind_the_word() {
    assertThat(refused("cannot, no spare on the van")).containsExactly(not("no spare on the van"));
  }

  @Test
  void whoever_gives_no_reason_has_refused_all_the_same() {
    assertThat(refused("cannot", "")).containsExactly(not(""));
    assertThat(refused("not possible", "save")).endsWith(not(""));
    assertThat(refused("cannot tell")).endsWith(not("")).hasSize(3);
  }

  @Test
  void back_at_the_reason_takes_the_word_back() {
    assertThat(refused("cannot", "back")).isEmpty();
  }

  /** A reason that names a danger is asked about, like any other words. */
  @Test
  void a_danger_in_the_reason_is_asked_about() {
    assertThat(refused("cannot", "there is smoke coming out of the operator", "1")).hasSize(2);
    assertThat(typed.screen()).contains("That may mean danger");
  }

  @Test
  void correct_takes_back_that_a_repair_could_not_be_done() {
    refused("cannot", "no spare");
    try (OpenCase open = typed.open()) {
      Sitting sitting = typed.sitting(open, "yes");
      new Corrections(sitting).choose("selector");
      assertThat(open.moment().state().work().declined()).isEmpty();
    }
  }

  /** A marker in a new place shifts both ends; a leaf that runs to the old ones strikes. */
  @Test
  void a_gate_whose_limits_are_still_to_be_taught_is_tried_with_a_hand_on_the_stop_button() {
    assertThat(tried("fit-marker"))
        .contains("WARNING: Still to do: teach the travel limits again.")
        .contains("a hand on the stop button")
        .contains("where it stops does not count yet");
  }

  @Test
  void a_gate_whose_limits_are_as_they_were_is_tried_without() {
    assertThat(tried("charge-batteries")).contains("Retest").doesNotContain("Still to do");
  }
}
