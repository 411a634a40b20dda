package yett.interview.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.testing.Shipped;

class SiteNeedsTest {
  private final RuleBase base = Shipped.BASE;

  private static Moment at(Interview interview, Event... events) {
    List<Entry> entries = new ArrayList<>();
    List<Event> all = new ArrayList<>();
    all.add(new Event.Opened("gate", Role.TECHNICIAN, ""));
    Shipped.BASE
        .ordinaryChecks()
        .filter(c -> c.danger())
        .forEach(
            c -> all.add(new Event.Answered(c.id(), new Answer.Chosen(c.outcomes().get(0).id()))));
    all.addAll(List.of(events));
    all.forEach(
        e -> entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, e)));
    return interview.at(entries);
  }

  private List<String> needed(Event... before) {
    try (Interview interview = Shipped.QUICK.newInterview()) {
      return new SiteNeeds(base, at(interview, before))
          .open().stream().map(SiteQuestion::id).toList();
    }
  }

  private static final Event[] REPORTED = {
    new Event.SiteTaken(),
    new Event.Complained(List.of("noisy-chain")),
    new Event.Happened(List.of()),
    new Event.SetUpEntered("locked-off", "chain-sag"),
    new Event.AskedFor("chain-sag"),
  };

  private static Event[] and(Event... more) {
    List<Event> all = new ArrayList<>(List.of(more));
    all.addAll(List.of(REPORTED));
    return all.toArray(Event[]::new);
  }

  @Test
  void a_reading_needs_what_its_usual_range_is_computed_from() {
    assertThat(needed(REPORTED)).contains("chain-span", "chain-size").doesNotContain("leaf-mass");
  }

  @Test
  void what_was_told_is_not_asked_again() {
    assertThat(needed(and(new Event.SiteAnswered("chain-span", "5.2 m"))))
        .contains("chain-size")
        .doesNotContain("chain-span");
  }

  @Test
  void what_a_look_depends_on_is_asked_before_the_gate_is_locked_off_for_it() {
    List<Event> reported = new ArrayList<>(List.of(REPORTED));
    reported.set(3, new Event.AskedFor("marker-look"));
    assertThat(needed(reported.subList(0, 4).toArray(Event[]::new)))
        .containsExactly("limits-by", "marker");
  }

  @Test
  void nothing_is_needed_before_there_is_a_step_that_goes_by_it() {
    assertThat(needed()).isEmpty();
  }
}
