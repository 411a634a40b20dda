package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.interview.course.Expertise;
import yett.knowledge.LeftOut;
import yett.knowledge.RuleBase;
import yett.replay.RecordedCase;

/** Which new card costs a case: found by leaving cards out, not by who comes first in the end. */
class CulpritsTest {
  @TempDir private Path one;
  @TempDir private Path other;

  private static final String GREEDY =
      """
      cause: chain-worn
      name: Chain worn long
      prior: 0.8
      shows: {noisy-chain: 0.9, noise-kind: {slap: 0.9, usual: 0.1}, chain-sag: {slack: 0.95, ordinary: 0.05}}
      removed-by: {tighten-chain: 0.9}
      source: considered judgement
      """;

  private static String innocent(int number) {
    return """
        cause: innocent-%d
        name: Something rare
        prior: 0.0001
        shows: {held-open: {meant: 0.6, not-meant: 0.4}}
        removed-by: {explain-use: 0.9}
        source: considered judgement
        """
        .formatted(number);
  }

  private List<String> costs(SmallFolder before, SmallFolder now) {
    Comparison comparison = Comparison.of(before.side(""), now.side(""), () -> {});
    assertThat(comparison.wrong()).contains("slack");
    return Culprits.of(
        comparison,
        before.expertise().base(),
        now.expertise().base(),
        now.cases(""),
        base -> Expertise.of(base, Path.of("target/rule-cache")),
        () -> {});
  }

  @Test
  void among_a_few_the_one_without_which_the_case_is_right() {
    SmallFolder more = new SmallFolder(other).noisy();
    more.write("worn.yaml", GREEDY);
    more.write("innocent.yaml", innocent(1));
    assertThat(costs(new SmallFolder(one).noisy(), more))
        .containsExactly("cause chain-worn costs: slack");
  }

  @Test
  void among_many_it_is_found_in_halves() {
    SmallFolder more = new SmallFolder(other).noisy();
    more.write("worn.yaml", GREEDY);
    for (int i = 1; i <= 9; i++) {
      more.write("innocent-" + i + ".yaml", innocent(i));
    }
    assertThat(costs(new SmallFolder(one).noisy(), more))
        .containsExactly("cause chain-worn costs: slack");
  }

  @Test
  void where_a_card_was_changed_no_new_one_is_blamed() {
    SmallFolder more = new SmallFolder(other).noisy();
    more.change("causes.yaml", "prior: 0.15", "prior: 0.0001");
    more.change("causes.yaml", "prior: 0.04", "prior: 0.4");
    more.write("innocent.yaml", innocent(1));
    assertThat(costs(new SmallFolder(one).noisy(), more))
        .containsExactly("no new card, but one that was changed, costs: slack, dark-display");
  }

  @Test
  void a_card_that_only_the_first_has_is_named() {
    SmallFolder folder = new SmallFolder(one).noisy();
    RuleBase before = folder.expertise().base();
    RuleBase now = LeftOut.of(before, Set.of("cause chain-slack"));
    List<RecordedCase> slack = folder.cases("slack").cases();
    assertThat(
            new Culprits(
                    now,
                    Optional.of(before),
                    base -> Expertise.of(base, Path.of("target/rule-cache")),
                    () -> {})
                .words(slack, List.of()))
        .containsExactly(
            "without cause chain-slack, which only the first has, it goes wrong: slack");
  }

  @Test
  void cases_that_a_change_cannot_touch_are_not_replayed() {
    SmallFolder before = new SmallFolder(one).noisy();
    SmallFolder rare = new SmallFolder(other).noisy();
    rare.write("innocent.yaml", innocent(1));
    Comparison few = Comparison.ofTouched(before.side(""), rare.side(""), KeptRuns.NONE, () -> {});
    assertThat(few.untouched()).isEqualTo(2);
    assertThat(few.differences()).isEmpty();

    rare.write("worn.yaml", GREEDY);
    Comparison touched =
        Comparison.ofTouched(before.side(""), rare.side(""), KeptRuns.NONE, () -> {});
    assertThat(touched.wrong()).containsExactly("slack");
  }

  /** A dark display is what it would show first; the lit one of the file rules it out. */
  private static final String RULED_OUT =
      """
      cause: slap-in-the-dark
      name: Something that slaps and darkens
      prior: 0.02
      shows: {display-lit: {dark: 0.99, steady: 0.01}, noise-kind: {slap: 0.97, usual: 0.03}}
      removed-by: {tighten-chain: 0.9}
      source: considered judgement
      """;

  @Test
  void a_case_in_which_a_new_cause_stands_out_until_more_is_known_is_replayed() {
    SmallFolder before = new SmallFolder(one);
    SmallFolder now = new SmallFolder(other);
    now.write("dark.yaml", RULED_OUT);
    Comparison touched =
        Comparison.ofTouched(before.side("slack"), now.side("slack"), KeptRuns.NONE, () -> {});
    assertThat(touched.untouched()).isZero();
  }
}
