package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** A caution about what a gate does not have takes attention from those that matter. */
class CautionsAtSiteTest {
  private static List<String> beforeLockingOff(Event... told) {
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened("Net loft", Role.TECHNICIAN, "f"));
    List<Check> dangers = Shipped.BASE.checks().values().stream().filter(Check::danger).toList();
    for (Check danger : dangers) {
      String none = danger.outcomes().get(0).id();
      events.add(new Event.Answered(danger.id(), new Answer.Chosen(none)));
    }
    events.addAll(List.of(told));
    events.add(new Event.SiteTaken());
    events.add(new Event.Complained(List.of("chain-hangs")));
    events.add(new Event.Happened(List.of()));
    events.add(new Event.AskedFor("chain-pieces"));
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
    }
    try (Interview interview = Shipped.QUICK.newInterview()) {
      Step step = interview.at(entries).step();
      assertThat(step).isInstanceOf(Step.Enter.class);
      assertThat(((Step.Enter) step).setUp().id()).isEqualTo("locked-off");
      return step.cautions().stream().map(Caution::hazard).toList();
    }
  }

  @Test
  void nobody_is_warned_of_batteries_where_there_are_none() {
    assertThat(beforeLockingOff(new Event.SiteAnswered("batteries", "none")))
        .contains("mains")
        .doesNotContain("battery");
  }

  @Test
  void on_a_solar_gate_the_panel_takes_the_place_of_the_mains() {
    assertThat(beforeLockingOff(new Event.SiteAnswered("supply", "solar")))
        .contains("solar-panel", "battery")
        .doesNotContain("mains");
    assertThat(beforeLockingOff(new Event.SiteAnswered("supply", "mains")))
        .contains("mains")
        .doesNotContain("solar-panel");
    assertThat(beforeLockingOff()).contains("mains", "solar-panel");
  }

  /** Their steps are the same whatever feeds the operator, so they name the supply. */
  @Test
  void no_set_up_switches_mains_that_a_solar_gate_does_not_have() {
    Shipped.BASE
        .setUps()
        .values()
        .forEach(
            s ->
                assertThat(
                        Stream.of(s.enter(), s.leave(), s.enterAgain(), s.leaveAgain())
                            .flatMap(List::stream))
                    .as(s.id())
                    .noneMatch(
                        step ->
                            step.matches("(?i).*\\bmains\\b.*")
                                && !step.contains("mains or solar panel")));
  }

  @Test
  void everybody_is_where_there_are_some_or_nobody_knows() {
    assertThat(beforeLockingOff(new Event.SiteAnswered("batteries", "agm"))).contains("battery");
    assertThat(beforeLockingOff()).contains("battery");
  }
}
