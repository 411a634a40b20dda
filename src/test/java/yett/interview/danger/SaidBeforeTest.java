package yett.interview.danger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** What was said of a danger is said of the gate. */
class SaidBeforeTest {
  private static Step.AskComplaints asked(Role role, String movement) {
    List<Entry> entries = new ArrayList<>();
    try (Interview interview = Shipped.QUICK.newInterview()) {
      add(entries, role, new Event.Opened("Fish dock", role, "f"));
      for (int i = 0; i < 30; i++) {
        Step step = interview.at(entries, role).step();
        if (step instanceof Step.AskComplaints complaints) {
          return complaints;
        } else if (step instanceof Step.AskDangers dangers) {
          for (Check danger : dangers.dangers()) {
            String outcome =
                danger.id().equals("danger-movement") ? movement : danger.outcomes().get(0).id();
            add(entries, role, new Event.Answered(danger.id(), new Answer.Chosen(outcome)));
          }
        } else if (step instanceof Step.MakeSafe safe) {
          add(entries, role, safe.done());
        } else if (step instanceof Step.Enter enter) {
          add(entries, role, enter.done());
        } else {
          add(entries, role, new Event.SiteTaken());
        }
      }
    }
    throw new AssertionError("the complaint was never asked about");
  }

  private static void add(List<Entry> entries, Role role, Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.parse("2026-03-02T09:00:00Z"), role, event));
  }

  @Test
  void a_gate_that_moved_by_itself_is_not_asked_about_once_more() {
    Step.AskComplaints asked = asked(Role.TECHNICIAN, "moved-by-itself");
    assertThat(asked.said()).extracting(Check::id).containsExactly("moves-alone");
    assertThat(asked.complaints()).extracting(Check::id).doesNotContain("moves-alone");
    assertThat(asked.reported(List.of("slow")).complaints()).containsExactly("moves-alone", "slow");
    assertThat(asked.reported(List.of()).complaints()).containsExactly("moves-alone");
  }

  @Test
  void a_gate_without_danger_is_asked_about_in_full() {
    Step.AskComplaints asked = asked(Role.TECHNICIAN, "neither");
    assertThat(asked.said()).isEmpty();
    assertThat(asked.complaints()).extracting(Check::id).contains("moves-alone");
  }
}
