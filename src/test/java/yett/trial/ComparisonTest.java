package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComparisonTest {
  @TempDir private Path one;
  @TempDir private Path other;

  private static Comparison compare(SmallFolder a, SmallFolder b) {
    return Comparison.of(a.expertise(), a.cases(""), b.expertise(), b.cases(""), () -> {});
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
    SmallFolder changed =
        new SmallFolder(other)
            .change(
                "checks.yaml",
                "chain-slack: {usual: 0.2, slap: 0.8}",
                "chain-slack: {usual: 0.9, slap: 0.1}");
    Comparison comparison = compare(new SmallFolder(one), changed);
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
}
