package yett.interview.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yett.belief.Belief;
import yett.belief.Observation;
import yett.knowledge.Check;
import yett.testing.Shipped;

class ProspectsTest {
  @Test
  void what_would_turn_a_belief_is_the_outcome_that_leaves_the_cause_least_probable() {
    Belief belief = Belief.atReport(Shipped.QUICK.model());
    List<Check> checks = Shipped.QUICK.base().ordinaryChecks().limit(30).toList();
    int cause = belief.model().indexOf("chain-slack");
    Prospects.Doubt doubt = Prospects.doubt(belief, checks, cause).orElseThrow();
    Check check = doubt.check();
    int outcome = check.outcomes().indexOf(doubt.outcome());
    Observation seen = Observation.of(check.id(), outcome, check.outcomes().size());
    assertThat(doubt.then()).isEqualTo(belief.learn(seen).atCallOut()[cause]);
    assertThat(doubt.then()).isLessThan(belief.atCallOut()[cause] - 0.01);
    for (Check other : checks) {
      double[] chances = belief.predict(other.id());
      for (int y = 0; y < chances.length; y++) {
        Observation shown = Observation.of(other.id(), y, chances.length);
        assertThat(chances[y] < 0.02 || belief.learn(shown).atCallOut()[cause] >= doubt.then())
            .isTrue();
      }
    }
    assertThat(Prospects.doubt(belief, List.of(), cause)).isEmpty();
  }
}
