package yett.command.diagnose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.testing.Shipped;

class SiteViewsTest {
  private static String heading(String check) {
    Step step =
        new Step.Ask(
            Shipped.BASE.checks().get(check),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Occasion.of(Occasion.Kind.WORTH));
    return new SiteViews(Shipped.BASE)
        .needed(step, List.of(Shipped.BASE.siteQuestions().get("beams")), Map.of())
        .get(0)
        .toString();
  }

  /** The beams have nothing to do with the manual release, but with what is proved after it. */
  @Test
  void devices_asked_for_before_the_first_proof_decide_which_proofs_are_made() {
    assertThat(heading("manual-release-works")).contains("Which proofs are made depends on this");
    assertThat(heading("chain-sag")).contains("The next step depends on this");
  }
}
