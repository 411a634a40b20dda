package yett.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.History;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** What may have happened lately, the most telling first. */
class HistoryWorthTest {
  private static final Expertise EXPERTISE = Shipped.EXPERTISE;

  private final List<Entry> entries = new ArrayList<>();

  @Test
  void a_flat_battery_makes_one_ask_for_a_power_cut_before_the_telephone_line() {
    List<String> offered = offered("fails-without-mains", 7);
    assertThat(offered).hasSize(7).contains("mains-outage").doesNotContain("line-changed");
  }

  @Test
  void a_hanging_chain_makes_one_ask_for_work_on_the_chain_first() {
    assertThat(offered("chain-hangs", 3)).contains("chain-worked-on");
  }

  private List<String> offered(String complaint, int many) {
    try (Interview interview = EXPERTISE.newInterview()) {
      record(new Event.Opened("Ferry", Role.CALLER, "any"));
      ((Step.AskDangers) interview.at(entries, Role.CALLER).step())
          .dangers()
          .forEach(
              d -> record(new Event.Answered(d.id(), new Answer.Chosen(d.outcomes().get(0).id()))));
      record(new Event.SiteTaken());
      record(new Event.Complained(List.of(complaint)));
      Moment moment = interview.at(entries, Role.CALLER);
      return HistoryWorth.most(
              List.copyOf(EXPERTISE.base().histories().values()), moment.belief(), many)
          .stream()
          .map(History::id)
          .toList();
    }
  }

  private void record(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.CALLER, event));
  }
}
