package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.testing.Shipped;

/** A danger that the reasoning cannot use is not left out: nobody runs the gate. */
class FailingEventsTest {
  private static final Event NONE = new Event.Answered("danger-burning", new Answer.Chosen("none"));
  private static final Event BURNS =
      new Event.Answered("danger-burning", new Answer.Chosen("burning"));

  /** Reasoning that fails on a danger. */
  private static Moment after(Event... events) {
    List<Entry> entries = new java.util.ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
    }
    try (Interview interview = new Interview(Shipped.QUICK, new AnyAdviser(1))) {
      return new FailingEvents(
              Shipped.BASE,
              sound -> {
                boolean burns =
                    CaseState.of(sound).latest("danger-burning").stream()
                        .anyMatch(a -> a.answer().is("burning"));
                if (burns) {
                  throw new IllegalStateException("broken");
                }
                return interview.at(sound, Role.TECHNICIAN);
              })
          .of(entries);
    }
  }

  private static Event opened() {
    return new Event.Opened("Fish dock", Role.TECHNICIAN, "any");
  }

  private static void isUntold(Moment moment, long number) {
    assertThat(moment.apart()).extracting(a -> a.entry().number()).containsExactly(number);
    assertThat(moment.entries().get((int) number - 1)).isEqualTo(moment.apart().get(0).entry());
    assertThat(moment.judgement().forbidden()).contains(SetUp.GATE_RUNNING);
  }

  @Test
  void an_answer_about_a_danger_counts_as_untold() {
    isUntold(after(opened(), BURNS), 2);
    isUntold(after(opened(), NONE, BURNS), 3);
  }

  @Test
  void a_correction_into_a_danger_counts_as_untold() {
    isUntold(after(opened(), NONE, new Event.Corrected(2, new Answer.Chosen("burning"))), 3);
  }

  @Test
  void an_answer_about_a_danger_that_cannot_be_read_counts_as_untold() {
    isUntold(
        after(
            opened(),
            NONE,
            new Event.Unread(
                "answered", "{\"type\":\"answered\",\"check\":\"danger-burning\",\"seen\":1}")),
        3);
  }

  @Test
  void once_somebody_has_looked_again_the_gate_may_be_run() {
    assertThat(after(opened(), BURNS, NONE).judgement().forbidden())
        .doesNotContain(SetUp.GATE_RUNNING);
  }
}
