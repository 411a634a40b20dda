package yett.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.belief.Belief;
import yett.belief.CardModel;
import yett.belief.CausalModel;
import yett.belief.Observation;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

/** Advice on the cards that are shipped. */
class PlannerTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final CausalModel MODEL = CardModel.of(BASE);

  private static Set<String> checks() {
    return BASE.ordinaryChecks()
        .filter(c -> !c.danger())
        .map(Check::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Advice advise(Belief belief) {
    return new Planner(BASE)
        .advise(belief, new Planner.Options(checks(), BASE.repairs().keySet(), Set.of(), false));
  }

  @Test
  void the_same_case_gets_the_same_advice_however_its_options_are_listed() {
    Belief belief = Belief.atReport(MODEL);
    List<String> turned = new ArrayList<>(checks());
    Collections.reverse(turned);
    Planner.Options options =
        new Planner.Options(new LinkedHashSet<>(turned), BASE.repairs().keySet(), Set.of(), false);
    assertThat(new Planner(BASE).advise(belief, options)).isEqualTo(advise(belief));
  }

  @Test
  void a_gate_of_which_nothing_is_known_is_asked_about_before_it_is_handed_over() {
    Advice advice = advise(Belief.atReport(MODEL));
    assertThat(advice.kind()).isEqualTo(Advice.Kind.ASK);
    assertThat(advice.expected()).isLessThan(advice.repairingNow());
  }

  /** Answers every check as a gate with this fault alone most probably would. */
  private static Belief knowing(String cause) {
    Belief belief = Belief.atReport(MODEL);
    for (String check : checks()) {
      double[] chances = MODEL.table(check).outcomeChances(MODEL.indexOf(cause));
      int best = 0;
      for (int y = 1; y < chances.length; y++) {
        best = chances[y] > chances[best] ? y : best;
      }
      belief = belief.learn(Observation.of(check, best, chances.length));
    }
    return belief;
  }

  /** At once, or after the look that the card of the repair wants first. */
  @Test
  void a_fault_that_is_found_and_soon_mended_is_mended() {
    for (String cause : List.of("manual-release-engaged", "mains-missing", "chain-off")) {
      Belief belief = knowing(cause);
      Advice advice = advise(belief);
      assertThat(belief.atCallOut(cause)).as(cause).isGreaterThan(0.9);
      Repair repair = BASE.repairs().get(advice.jobs().get(0).repair());
      assertThat(repair.removes()).as(cause).containsKey(cause);
      if (advice.kind() == Advice.Kind.ASK) {
        assertThat(repair.measureFirst()).as(cause).contains(advice.candidates().get(0).check());
      } else {
        assertThat(advice.kind()).as(cause).isEqualTo(Advice.Kind.REPAIR);
      }
    }
  }

  @Test
  void set_ups_that_exclude_what_is_needed_are_left_first() {
    Planner planner = new Planner(BASE);
    Planner.Change change =
        planner.change(Set.of("gate-running", "cover-off"), List.of("locked-off"));
    assertThat(change.leave()).containsExactlyInAnyOrder("cover-off", "gate-running");
    assertThat(change.enter()).containsExactly("locked-off");
    assertThat(planner.change(Set.of("locked-off"), List.of("locked-off")))
        .isEqualTo(new Planner.Change(List.of(), List.of()));
  }
}
