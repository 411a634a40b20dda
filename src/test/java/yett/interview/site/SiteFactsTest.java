package yett.interview.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import yett.knowledge.History;
import yett.knowledge.SiteQuestion;
import yett.quantity.Units;
import yett.testing.Shipped;

/** A gate as installed, as far as it was told. */
class SiteFactsTest {
  private static final String RUN = "chain-span";
  private static final SiteFacts FACTS = new SiteFacts(Shipped.BASE);
  private static final SiteQuestion QUESTION = Shipped.BASE.siteQuestions().get(RUN);

  private static double run(Map<String, String> told) {
    return QUESTION.measures().orElseThrow().parse(FACTS.answers(told).get(RUN));
  }

  @Test
  void the_usual_free_run_goes_along_with_the_opening_until_it_is_told() {
    assertThat(FACTS.answers(Map.of())).containsEntry(RUN, "5.2 m");
    assertThat(run(Map.of("opening", "8 m"))).isEqualTo(8200);
    assertThat(run(Map.of("opening", "26 ft"))).isEqualTo(8124.8);
    assertThat(run(Map.of("opening", "8 m", RUN, "7 m"))).isEqualTo(7000);
    assertThat(FACTS.answers(Map.of("opening", "8 m")).keySet())
        .containsExactlyElementsOf(FACTS.answers(Map.of()).keySet());
  }

  @Test
  void it_is_shown_in_the_units_of_the_person() {
    SiteQuestion customary = Shipped.BASE.in(Units.US).siteQuestions().get(RUN);
    assertThat(customary.said(FACTS.answers(Map.of("opening", "8 m")).get(RUN)))
        .doesNotContain("m")
        .contains("ft");
    assertThat(QUESTION.said(FACTS.answers(Map.of("opening", "8 m")).get(RUN))).isEqualTo("8.2 m");
  }

  /** How an edge is connected is no question where there is none. */
  @Test
  void what_depends_on_a_question_that_does_not_apply_does_not_apply() {
    History wireless =
        new History(
            "edge-battery-changed",
            "Battery of the edge replaced",
            "",
            Map.of(),
            Map.of("wireless-edge", List.of("wireless")),
            "");
    assertThat(FACTS.site(Map.of("edges", "none")).allows(wireless)).isFalse();
    assertThat(FACTS.site(Map.of("wireless-edge", "wireless")).allows(wireless)).isTrue();
  }
}
