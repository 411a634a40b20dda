package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComparisonTest {
  @TempDir private Path one;
  @TempDir private Path other;

  private static Comparison compare(SmallFolder a, SmallFolder b) {
    return Comparison.of(a.side(""), b.side(""), () -> {});
  }

  @Test
  void a_rule_base_is_like_itself() {
    Comparison same = compare(new SmallFolder(one), new SmallFolder(other));
    assertThat(same.differences()).isEmpty();
    assertThat(same.cards()).isEmpty();
    assertThat(same.alone()).isEmpty();
    assertThat(same.first()).isEqualTo(same.second());
    assertThat(same.sums()).contains("another path: 0 of 2", "other repairs: 0 of 2");
  }

  @Test
  void two_are_told_apart_by_what_they_ask_and_believe() {
    Comparison comparison = compare(new SmallFolder(one), slackUnlikely());
    assertThat(comparison.differences()).extracting(Difference::name).contains("slack");
    assertThat(comparison.sums()).doesNotContain("another path: 0 of 2");
  }

  @Test
  void cases_and_cards_of_one_alone_are_named() {
    SmallFolder more = new SmallFolder(other);
    more.write(
        "frost.yaml",
        """
        history: frost
        name: Frost in the last days
        odds: {chain-slack: 2}
        source: considered judgement
        """);
    more.write(
        "frost.case.yaml",
        """
        case: after-the-frost
        person: caller
        history: [frost]
        answers: {danger-person: nobody}
        """);
    Comparison comparison = compare(new SmallFolder(one), more);
    assertThat(comparison.cards()).containsExactly("histories only in the second: frost");
    assertThat(comparison.alone()).containsExactly("after-the-frost (only in the second)");
    assertThat(comparison.second().cases()).isEqualTo(2);
  }

  private static final String WORN =
      """
      cause: chain-worn
      name: Chain worn long
      prior: 0.8
      shows: {noisy-chain: 0.9, noise-kind: {slap: 0.9, usual: 0.1}, chain-sag: {slack: 0.95, ordinary: 0.05}}
      removed-by: {tighten-chain: 0.9}
      source: considered judgement
      """;

  private static Difference slack(SmallFolder before, SmallFolder now) {
    return compare(before, now).differences().stream()
        .filter(d -> d.name().equals("slack"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_new_cause_that_took_a_case_over_is_named_with_what_spoke_for_it() {
    SmallFolder more = new SmallFolder(other).noisy();
    more.write("worn.yaml", WORN);
    assertThat(slack(new SmallFolder(one).noisy(), more).words())
        .anySatisfy(
            w ->
                assertThat(w)
                    .startsWith("taken over by chain-worn, a cause that only the second has: ")
                    .containsPattern("\\+\\d+\\.\\d dB noisy-chain said")
                    .containsPattern("[+-]\\d+\\.\\d dB at the outset"));
  }

  private SmallFolder slackUnlikely() {
    return new SmallFolder(other)
        .change(
            "checks.yaml",
            "chain-slack: {usual: 0.2, slap: 0.8}",
            "chain-slack: {usual: 0.9, slap: 0.1}");
  }
}
