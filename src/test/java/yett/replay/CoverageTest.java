package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yett.knowledge.Check;
import yett.testing.Shipped;

class CoverageTest {
  @Test
  void of_what_is_near_some_causes_that_on_which_they_show_most_comes_first() {
    List<String> all = Shipped.BASE.ordinaryChecks().map(Check::id).toList();
    List<String> checks =
        new Coverage(List.of(), all, List.of(), List.of())
            .near(Shipped.BASE, Set.of("chain-slack"), Set.of("chain-surface"))
            .checks();
    assertThat(checks).startsWith("chain-surface").doesNotContain("main-fuse");
    assertThat(checks.indexOf("chain-sag")).isBetween(1, 5);
  }

  @Test
  void own_cards_about_other_things_bring_neither_checks_nor_proofs_with_them() {
    List<String> checks = Shipped.BASE.ordinaryChecks().map(Check::id).toList();
    Coverage near =
        new Coverage(
                List.of("loop-broken", "chain-worn"),
                checks,
                List.of("lay-new-loop", "set-post"),
                List.of("loop-holds", "limits-hold"))
            .near(Shipped.BASE, Set.of("chain-slack"), Set.of("loop-broken", "lay-new-loop"));

    assertThat(near.causes()).containsExactly("loop-broken");
    assertThat(near.repairs()).containsExactly("lay-new-loop");
    assertThat(near.checks()).contains("chain-sag").doesNotContain("loop-resistance");
    assertThat(near.proofs()).containsExactly("limits-hold");
  }
}
