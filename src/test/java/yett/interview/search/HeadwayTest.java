package yett.interview.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.evidence.Believed;
import yett.interview.evidence.Trail;
import yett.interview.moment.Present;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.ShippedKnowledge;
import yett.rules.Judgement;

class HeadwayTest {
  private final RuleBase base = ShippedKnowledge.ruleBase();
  private final List<Check> alone =
      base.ordinaryChecks().filter(c -> !c.danger() && c.place().isEmpty()).toList();
  private final List<Check> there =
      base.ordinaryChecks()
          .filter(c -> c.place().isPresent() && c.place().equals(samePlace()))
          .toList();
  private final List<Entry> entries = new ArrayList<>();
  private final List<Trail.Move> moves = new ArrayList<>();
  private double chance = 0.3;

  @Test
  void asking_stops_paying_when_the_last_checks_moved_nothing() {
    for (int i = 0; i < base.planning().patience(); i++) {
      assertThat(isLost()).isFalse();
      answer(alone.get(i), 0.01);
    }
    assertThat(isLost()).isTrue();
  }

  @Test
  void an_answer_that_moves_something_gives_new_patience() {
    answer(alone.get(0), 0.01);
    answer(alone.get(1), base.planning().suspicion() + 0.01);
    for (int i = 2; i <= base.planning().patience(); i++) {
      answer(alone.get(i), 0);
      assertThat(isLost()).isFalse();
    }
    answer(alone.get(base.planning().patience() + 1), 0);
    assertThat(isLost()).isTrue();
  }

  @Test
  void looks_of_one_place_count_as_one_check() {
    for (Check look : there) {
      answer(look, 0);
    }
    for (int i = 0; i < base.planning().patience() - 1; i++) {
      assertThat(isLost()).isFalse();
      answer(alone.get(i), 0);
    }
    assertThat(isLost()).isTrue();
  }

  @Test
  void whoever_goes_on_is_asked_again_only_after_as_many() {
    for (int i = 0; i < base.planning().patience(); i++) {
      answer(alone.get(i), 0);
    }
    happen(new Event.WentOn());
    assertThat(isLost()).isFalse();
    happen(new Event.Repaired(base.repairs().keySet().iterator().next(), true));
    assertThat(isLost()).isFalse();
  }

  private Optional<Place> samePlace() {
    return base.ordinaryChecks()
        .map(Check::place)
        .filter(Optional::isPresent)
        .findFirst()
        .orElseThrow();
  }

  private void answer(Check check, double moves) {
    double before = chance;
    chance += moves;
    happen(new Event.Answered(check.id(), new Answer.Chosen(check.outcomes().get(0).id())));
    this.moves.add(
        new Trail.Move(
            entries.size(), check.id(), "", "", "", new double[] {before}, new double[] {chance}));
  }

  private void happen(Event event) {
    entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.TECHNICIAN, event));
  }

  private boolean isLost() {
    Trail trail = new Trail(new double[] {0.3}, List.copyOf(moves));
    Present present =
        new Present(base, CaseState.of(entries), Judgement.of(List.of()), Believed.of(null, trail));
    return new Headway(present).isLost();
  }
}
