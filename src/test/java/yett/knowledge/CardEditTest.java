package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class CardEditTest {
  private static final String CARDS =
      """
      # Harrow Quay's own figures
      cause: chain-slack
      name: Chain hangs slack   # ä tooth or two
      prior: 0.065      # a guess
      shows:
        noise-kind: {usual: 0.2, slap: usually}
      ---
      check: chain-sag
      ask: How far does it hang?
      likelihood:
        chain-slack: {"ordinary": 0.04, tight: 0.0,  slack: 0.46,
                      very-slack: 0.5}   # measured at the Dry dock
        chain-worn:
          # by hand
          ordinary: often       # in words
          slack: 0.35
      otherwise: {ordinary: 0.93, slack: 0.07}
      ---
      complaint: noisy-chain
      likelihood: {chain-slack: nearly always, chain-worn: 0.3}
      otherwise: 0.01        # hardly
      """;
  private static final List<String> OUTCOMES = List.of("ordinary", "tight", "slack", "very-slack");

  private static final double LITTLE = 0.0625;

  private static CardEdit edit(String text) {
    return new CardEdit(new TreeMap<>(Map.of("chain/chain.yaml", text)), name -> true);
  }

  private static String changed(CardEdit edit) {
    return edit.files().get("chain/chain.yaml");
  }

  @Test
  void figures_change_in_their_places_and_nothing_else() {
    CardEdit edit = edit(CARDS);
    assertThat(edit.prior("chain-slack", 0.0712)).contains("chain/chain.yaml");
    edit.row("chain-sag", "chain-slack", OUTCOMES, new double[] {0.05, 0.005, 0.445, 0.5});
    edit.row("noise-kind", "chain-slack", List.of("usual", "slap"), new double[] {0.3, 0.7});
    edit.row("noisy-chain", "chain-slack", List.of("unsaid", "said"), new double[] {0.18, 0.82});
    edit.otherwise("noisy-chain", List.of("unsaid", "said"), new double[] {0.98, 0.02});
    assertThat(changed(edit))
        .isEqualTo(
            CARDS
                .replace("0.065      #", "0.0712      #")
                .replace("{usual: 0.2, slap: usually}", "{usual: 0.3, slap: 0.7}")
                .replace(
                    "\"ordinary\": 0.04, tight: 0.0,  slack: 0.46",
                    "\"ordinary\": 0.05, tight: 0.005,  slack: 0.445")
                .replace("chain-slack: nearly always,", "chain-slack: 0.82,")
                .replace("otherwise: 0.01        #", "otherwise: 0.02        #"));
  }

  @Test
  void an_outcome_that_was_left_out_is_added_where_the_others_stand() {
    CardEdit edit = edit(CARDS);
    edit.row("chain-sag", "chain-worn", OUTCOMES, new double[] {0.5, 0, 0.3, 0.2});
    edit.otherwise("chain-sag", OUTCOMES, new double[] {0.9, 0.02, 0.08, 0});
    assertThat(changed(edit))
        .isEqualTo(
            CARDS
                .replace("ordinary: often       # in words", "ordinary: 0.5       # in words")
                .replace("    slack: 0.35\n", "    slack: 0.3\n    very-slack: 0.2\n")
                .replace(
                    "{ordinary: 0.93, slack: 0.07}", "{ordinary: 0.9, slack: 0.08, tight: 0.02}"));
  }

  @Test
  void line_ends_of_another_system_stay() {
    String text = CARDS.replace("\n", "\r\n");
    CardEdit edit = edit(text);
    edit.prior("chain-slack", 0.07);
    edit.row("chain-sag", "chain-worn", OUTCOMES, new double[] {0.5, 0, 0.3, 0.2});
    assertThat(changed(edit))
        .contains("prior: 0.07      # a guess\r\n", "    slack: 0.3\r\n    very-slack: 0.2\r\n");
    assertThat(changed(edit).replace("\r\n", "")).doesNotContain("\n", "\r");
  }

  /** Under an add-on lie cards that are not the trainer's own. */
  @Test
  void only_what_may_be_written_to_is_changed() {
    TreeMap<String, String> both = new TreeMap<>();
    both.put("chain/chain.yaml", CARDS);
    both.put("harrow-quay/own.yaml", "cause: chain-slack\nprior: 0.1\n");
    CardEdit edit = new CardEdit(both, name -> name.startsWith("harrow-quay/"));
    assertThat(edit.prior("chain-slack", 0.2)).contains("harrow-quay/own.yaml");
    assertThat(edit.files())
        .containsEntry("chain/chain.yaml", CARDS)
        .containsEntry("harrow-quay/own.yaml", "cause: chain-slack\nprior: 0.2\n");
  }

  @Test
  void what_is_not_there_is_not_written() {
    CardEdit edit = edit(CARDS);
    assertThat(edit.prior("chain-worn", 0.1)).isEmpty();
    assertThat(edit.row("chain-sag", "wheel-worn", OUTCOMES, new double[] {1, 0, 0, 0})).isEmpty();
    assertThat(changed(edit)).isEqualTo(CARDS);
  }

  @Test
  void chances_of_the_shipped_cards_are_changed_and_read_again() {
    SortedMap<String, String> files = KnowledgeSource.folder(Path.of("knowledge")).files();
    RuleBase before = RuleBase.read(() -> files);
    CardEdit edit = new CardEdit(files, name -> true);
    List<String> lost = new ArrayList<>();
    for (Cause cause : before.causes().values().stream().limit(4).toList()) {
      if (edit.prior(cause.id(), 0.0123).isEmpty()) {
        lost.add(cause.id());
      }
    }
    List<Check> checks = before.ordinaryChecks().filter(c -> !c.danger()).limit(4).toList();
    for (Check check : checks) {
      List<String> outcomes = check.outcomes().stream().map(Check.Outcome::id).toList();
      double[] row = new double[outcomes.size()];
      Arrays.fill(row, LITTLE);
      row[0] = 1 - LITTLE * (row.length - 1);
      for (String cause : check.likelihood().keySet()) {
        boolean written = isWritten(before, cause, check);
        if (written && edit.row(check.id(), cause, outcomes, row).isEmpty()) {
          lost.add(check.id() + " " + cause);
        }
      }
    }
    assertThat(lost).isEmpty();
    RuleBase after = RuleBase.read(edit::files);
    assertThat(after.causes().values().stream().limit(4).map(Cause::prior)).containsOnly(0.0123);
    for (Check check : checks) {
      after
          .checks()
          .get(check.id())
          .likelihood()
          .forEach(
              (cause, row) -> {
                if (isWritten(after, cause, check)) {
                  assertThat(row[row.length - 1]).isEqualTo(LITTLE);
                }
              });
    }
    assertThat(after.checks().keySet()).isEqualTo(before.checks().keySet());
  }

  /** What follows from effects stands in no place of the cause. */
  private static boolean isWritten(RuleBase base, String cause, Check check) {
    return base.effectRows().behind(base.causes().get(cause), check).isEmpty();
  }
}
