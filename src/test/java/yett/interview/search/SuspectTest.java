package yett.interview.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.interview.step.Suspect;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** What is offered when asking has stopped paying. */
class SuspectTest {
  private final Interview interview = Shipped.QUICK.newInterview();
  private final List<Entry> entries = new ArrayList<>();

  @AfterEach
  void close() {
    interview.close();
  }

  private void say(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }

  private void ordinary(Check check) {
    say(
        new Event.Answered(
            check.id(),
            check.measured()
                ? new Answer.CannotTell()
                : new Answer.Chosen(check.outcomes().get(0).id())));
  }

  /** A gate at which every look is ordinary, until asking has stopped paying. */
  private Step.TakeStock nothingFound() {
    say(new Event.Opened("East", Role.TECHNICIAN, "any"));
    Shipped.BASE.checks().values().stream().filter(Check::danger).forEach(this::ordinary);
    say(new Event.SiteTaken());
    say(new Event.Complained(List.of("works-sometimes")));
    say(new Event.Happened(List.of()));
    for (int i = 0; i < 100; i++) {
      Step step = interview.at(entries).step();
      if (step instanceof Step.TakeStock stock) {
        return stock;
      } else if (step instanceof Step.Enter enter) {
        say(enter.done());
      } else if (step instanceof Step.Leave leave) {
        say(leave.done());
      } else if (step instanceof Step.LookRound round) {
        round.looks().forEach(look -> ordinary(look.check()));
      } else if (step instanceof Step.Ask ask) {
        ordinary(ask.check());
      } else {
        throw new AssertionError("not foreseen: " + step);
      }
    }
    throw new AssertionError("asking never stopped paying");
  }

  @Test
  void that_nothing_is_wrong_is_among_what_may_still_be_so() {
    Suspect nothing =
        nothingFound().suspects().stream()
            .filter(s -> s.cause().id().equals(Cause.NOTHING_WRONG))
            .findFirst()
            .orElseThrow();
    assertThat(nothing.repair().orElseThrow().id()).isEqualTo("explain-use");
    assertThat(nothing.worthTrying()).isTrue();
  }

  @Test
  void nothing_is_fitted_on_less_than_one_chance_in_ten() {
    Cause worn = Shipped.BASE.causes().get("batteries-worn");
    var repair = Optional.of(Shipped.BASE.repairs().get("replace-batteries"));
    assertThat(new Suspect(worn, 0.04, repair).worthTrying()).isFalse();
    assertThat(new Suspect(worn, 0.2, repair).worthTrying()).isTrue();
    assertThat(new Suspect(worn, 0.2, Optional.empty()).worthTrying()).isFalse();
  }
}
