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
}
