package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.plan.Advice;
import yett.testing.Shipped;

/** What comes to light after the gate ran again, and after its proofs passed. */
class LateFaultTest {
  private static final Advice NOTHING =
      new Advice(Advice.Kind.NOTHING_LEFT, List.of(), List.of(), 0, 0, false);

  private final List<Entry> entries = new ArrayList<>();

  @Test
  void a_gate_is_not_back_in_service_with_a_fault_that_forbids_to_run_it() {
    proved();
    happen(new Event.Answered("chain-looks", new Answer.Chosen("parted")));
    assertThat(last()).isInstanceOf(Step.HandOver.class);
  }

  @Test
  void what_was_proved_before_a_danger_is_proved_anew() {
    proved();
    happen(new Event.Answered("danger-movement", new Answer.Chosen("closed-on")));
    Step step = step();
    assertThat(step).isInstanceOf(Step.MakeSafe.class);
    happen(((Step.MakeSafe) step).done());
    Step next = last();
    assertThat(next).isInstanceOf(Step.Ask.class);
    assertThat(((Step.Ask) next).check().kind()).isEqualTo(Check.Kind.PROOF);
  }

  /** Up to the moment before the closing. */
  private void proved() {
    happen(new Event.Opened("Harrow Quay, north gate", Role.TECHNICIAN, "any"));
    Shipped.BASE
        .ordinaryChecks()
        .filter(Check::danger)
        .forEach(
            c -> happen(new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
    happen(new Event.SiteTaken());
    happen(new Event.Complained(List.of("slow")));
    happen(new Event.Happened(List.of()));
    happen(new Event.Repaired("switch-off-new-lamp", true));
    happen(new Event.Retested(true));
    Shipped.BASE
        .proofs()
        .forEach(p -> happen(new Event.Answered(p.id(), new Answer.Chosen(Check.PASS))));
    assertThat(last()).isInstanceOf(Step.CloseRepaired.class);
  }

  private void happen(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }

  /** The next step when the plan has nothing to ask and nothing to repair. */
  private Step step() {
    try (Interview interview = new Interview(Shipped.QUICK, (b, options) -> NOTHING)) {
      return interview.at(entries).step();
    }
  }

  /** The step after the set-ups that lead to it. */
  private Step last() {
    Step step = step();
    while (step instanceof Step.Enter || step instanceof Step.Leave) {
      happen(step instanceof Step.Enter e ? e.done() : ((Step.Leave) step).done());
      step = step();
    }
    return step;
  }
}
