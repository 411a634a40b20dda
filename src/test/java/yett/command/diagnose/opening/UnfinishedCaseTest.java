package yett.command.diagnose.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.command.diagnose.TechniciansCase;
import yett.desk.OpenCase;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.testing.Shipped;

/** Whoever begins a case at a gate hears of the one that was left there. */
class UnfinishedCaseTest extends TechniciansCase {
  private Optional<UnfinishedCase.Left> at(String gate) {
    return new UnfinishedCase(typed.casebook(), Shipped.BASE).at(gate);
  }

  private void happened(Event event) {
    try (OpenCase open = typed.open()) {
      open.record(event);
    }
  }

  @Test
  void a_case_that_was_handed_over_is_told_with_what_it_left_in_force() {
    happened(new Event.SetUpEntered("locked-off", ""));
    happened(new Event.Closed(Ending.HANDED_OVER));
    try (OpenCase open = typed.open()) {
      typed.sitting(open).show(at("Fish dock").orElseThrow().told());
    }
    assertThat(typed.screen())
        .contains("Case " + typed.id() + " at this gate is not finished: handed over")
        .contains("In force there: locked off, every supply off, proved dead.")
        .contains("resume " + typed.id());
  }

  @Test
  void a_gate_that_was_left_locked_off_or_barred_is_out_of_use_until_its_case_is_finished() {
    assertThat(at("Fish dock").filter(UnfinishedCase.Left::isOutOfUse)).isEmpty();
    happened(new Event.SetUpEntered("barred", ""));
    happened(new Event.Closed(Ending.HANDED_OVER));
    assertThat(at("Fish dock").filter(UnfinishedCase.Left::isOutOfUse)).isPresent();
    assertThat(at("Ferry gate").filter(UnfinishedCase.Left::isOutOfUse)).isEmpty();
    happened(new Event.Closed(Ending.REPAIRED));
    assertThat(at("Fish dock").filter(UnfinishedCase.Left::isOutOfUse)).isEmpty();
  }

  @Test
  void a_case_that_was_repaired_and_one_at_another_gate_are_not() {
    assertThat(at("Fish dock")).isPresent();
    assertThat(at("Ferry gate")).isEmpty();
    happened(new Event.Closed(Ending.REPAIRED));
    assertThat(at("Fish dock")).isEmpty();
  }
}
