package yett.interview.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.Role;
import yett.wording.ForceWords;

/** What was measured of the force, before and after a repair. */
class ForcesTest {
  private static final String CLOSING = "reversal-closing";

  private final List<Entry> entries = new ArrayList<>();

  private void happens(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }

  private void measured(int times, double peak) {
    for (int i = 0; i < times; i++) {
      happens(
          new Event.ForceTaken(
              CLOSING, 300, Event.Height.MIDDLE, peak, 0.3, Optional.empty(), List.of()));
    }
  }

  private Forces forces() {
    return Forces.of(entries);
  }

  @Test
  void a_point_over_its_limit_is_owed_after_a_repair_until_it_is_measured_in_order() {
    measured(3, 455);
    assertThat(forces().forbid(CLOSING)).isTrue();
    happens(new Event.Repaired("set-force", false));
    assertThat(forces().points()).as("nothing was done").hasSize(1);
    happens(new Event.Repaired("set-speed", true));
    assertThat(forces().points()).isEmpty();
    assertThat(forces().owed(CLOSING)).hasSize(1);
    assertThat(forces().forbid(CLOSING)).isTrue();
    assertThat(forces().forbid("reversal-opening")).isFalse();
    measured(2, 320);
    assertThat(forces().forbid(CLOSING)).as("three times each").isTrue();
    measured(1, 320);
    assertThat(forces().owed(CLOSING)).isEmpty();
    assertThat(forces().forbid(CLOSING)).isFalse();
    happens(new Event.Repaired("tighten-chain", true));
    assertThat(forces().forbid(CLOSING)).as("it was in order after the repair").isFalse();
  }

  @Test
  void the_paper_tells_what_was_over_before_how_often_and_how_many_points_were_left_out() {
    measured(2, 455);
    assertThat(ForceWords.lines(forces()))
        .anyMatch(
            l -> l.contains(": mean 455 N") && l.endsWith("over the limits, measured 2 of 3 times"))
        .contains("Closing: measured at 1 of 9 points");
    assertThat(ForceWords.over(forces(), CLOSING).orElse(""))
        .startsWith("the measured force is over its limit: gap 300 mm, at the middle: mean 455 N")
        .endsWith(" allowed), measured 2 of 3 times");
    happens(new Event.Repaired("set-speed", true));
    assertThat(ForceWords.lines(forces()))
        .anyMatch(
            l -> l.startsWith("Before the repair: closing, gap 300 mm") && l.contains("455 N"))
        .contains("Still to be measured again: closing, gap 300 mm, at the middle");
  }
}
