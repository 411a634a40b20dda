package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.trial.Screen.Verdict;

/**
 * Which cases are replayed to tell two rule bases apart, and which of the others for certain not.
 */
class ScreenTest {
  @TempDir private Path one;
  @TempDir private Path other;

  private static final String ELSEWHERE =
      """
      cause: chain-worn
      name: Chain worn long
      prior: 0.8
      only-if: {batteries: [none]}
      shows: {noisy-chain: 0.9, noise-kind: {slap: 0.9, usual: 0.1}, chain-sag: {slack: 0.95, ordinary: 0.05}}
      removed-by: {tighten-chain: 0.9}
      after: {frost: 3}
      source: considered judgement
      """;

  private static final String FROST =
      """
      history: frost
      name: Frost in the last days
      odds: {chain-slack: 2}
      source: considered judgement
      """;

  private SmallFolder plain(Path folder) {
    SmallFolder cards = new SmallFolder(folder).noisy();
    cards.write("frost.yaml", FROST);
    return cards;
  }

  private static Verdict slack(SmallFolder before, SmallFolder now) {
    try (Screen screen = new Screen(before.expertise(), now.expertise())) {
      Verdict first = screen.of(now.cases("slack").cases().get(0));
      screen.of(now.cases("dark-display").cases().get(0));
      // The session has seen another case meanwhile.
      assertThat(screen.of(now.cases("slack").cases().get(0))).isEqualTo(first);
      return first;
    }
  }

  @Test
  void what_cannot_be_at_a_gate_changes_nothing_there_for_certain() {
    SmallFolder before = plain(one);
    SmallFolder now = plain(other);
    now.write("worn.yaml", ELSEWHERE);
    assertThat(slack(before, now)).isEqualTo(Verdict.ELSEWHERE);
    Comparison all = Comparison.of(before.side("slack"), now.side("slack"), () -> {});
    assertThat(all.differences()).isEmpty();
    assertThat(all.first()).isEqualTo(all.second());
    Comparison some = Comparison.ofTouched(before.side(""), now.side(""), KeptRuns.NONE, () -> {});
    assertThat(some.notReplayed().orElseThrow()).startsWith("2 cases at whose gates nothing");
  }

  @Test
  void where_it_can_be_nothing_is_certain() {
    SmallFolder before = plain(one);
    SmallFolder now = plain(other);
    now.write("worn.yaml", ELSEWHERE.replace("[none]", "[agm]"));
    assertThat(slack(before, now)).isEqualTo(Verdict.TO_REPLAY);
  }

  @Test
  void a_quick_look_is_told_as_one() {
    SmallFolder before = plain(one);
    SmallFolder now = plain(other);
    now.write("rare.yaml", ELSEWHERE.replace("[none]", "[agm]").replace("0.8", "0.0001"));
    assertThat(slack(before, now)).isEqualTo(Verdict.PASSED_OVER);
    Comparison some =
        Comparison.ofTouched(before.side("slack"), now.side("slack"), KeptRuns.NONE, () -> {});
    assertThat(some.notReplayed().orElseThrow()).contains("1 cases passed over at a quick look");
  }

  /** No chance moves, and yet something else is asked. */
  @Test
  void a_check_that_takes_longer_is_a_change() {
    SmallFolder now = plain(other);
    now.change("checks.yaml", "minutes: 3\nbands:\n  ordinary", "minutes: 30\nbands:\n  ordinary");
    assertThat(slack(plain(one), now)).isEqualTo(Verdict.TO_REPLAY);
  }

  @Test
  void a_change_of_rules_or_set_ups_may_touch_everything() {
    SmallFolder now = plain(other);
    now.write("rules/core.drl", "// as before\n" + now.text("rules/core.drl"));
    assertThat(slack(plain(one), now)).isEqualTo(Verdict.TO_REPLAY);
  }

  private static final String ROW =
      "rule,if opening,happened,odds,because,source\n"
          + "a long gate,%s,,chain-slack 3,it hangs further,considered judgement\n";

  /** What a row of a table concludes shows in what a case tells of its gate. */
  @Test
  void a_row_of_a_table_touches_the_cases_at_whose_gates_it_speaks() {
    SmallFolder far = plain(other);
    far.write("far.table.csv", ROW.formatted("above 9 m"));
    assertThat(slack(plain(one), far)).isEqualTo(Verdict.PASSED_OVER);
    SmallFolder here = plain(other);
    here.write("far.table.csv", ROW.formatted("below 9 m"));
    assertThat(slack(plain(one), here)).isEqualTo(Verdict.TO_REPLAY);
  }
}
