package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.desk.OpenCase;
import yett.interview.Event;

class RepairingTest extends TechniciansCase {
  private String tried(String repair) {
    try (OpenCase open = typed.open()) {
      open.record(
          new Event.Complained(List.of("runs-then-stops")), new Event.Repaired(repair, true));
      Sitting sitting = typed.sitting(open, "1");
      new Repairing(sitting, new Questions(sitting, new PromptRequests(sitting))).retest();
    }
    return typed.screen();
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
