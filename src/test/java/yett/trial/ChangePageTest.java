package yett.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.testing.Pages;

class ChangePageTest {
  private static final String GREEDY =
      """
      cause: chain-worn
      name: Chain <worn> long & "old"
      prior: 0.8
      shows: {noisy-chain: 0.9, noise-kind: {slap: 0.9, usual: 0.1}, chain-sag: {slack: 0.95, ordinary: 0.05}}
      removed-by: {tighten-chain: 0.9}
      source: considered judgement
      """;

  @TempDir private Path one;
  @TempDir private Path other;

  private static String page(SmallFolder before, SmallFolder now) {
    Comparison comparison = Comparison.of(before.side(""), now.side(""), () -> {});
    return ChangePage.of(
        comparison,
        List.of("cause chain-worn costs: slack"),
        before.expertise().base(),
        now.expertise().base(),
        "this against that.",
        "A4");
  }

  private static String words(String page) {
    return Pages.parsed(page).getDocumentElement().getTextContent();
  }

  @Test
  void it_tells_what_is_added_what_breaks_and_why() {
    SmallFolder now = new SmallFolder(other).noisy();
    now.write("worn.yaml", GREEDY);
    String page = page(new SmallFolder(one).noisy(), now);
    assertThat(page).doesNotContain("<worn>");
    assertThat(words(page))
        .containsSubsequence(
            "It breaks 1 and mends none of",
            "What it adds",
            "cause chain-worn: Chain <worn> long & \"old\"",
            "Cases that it breaks (1)",
            "slack",
            "taken over by chain-worn",
            "cause chain-worn costs: slack",
            "Cases that it mends",
            "None.",
            "Agreed by, date");
  }

  @Test
  void of_a_card_of_both_only_what_was_altered_is_told() {
    SmallFolder now = new SmallFolder(other).noisy();
    now.change("causes.yaml", "prior: 0.15", "prior: 0.14");
    String words = words(page(new SmallFolder(one).noisy(), now));
    assertThat(words).containsSubsequence("What it adds", "No card.", "What it changes", "cause ");
    assertThat(words).doesNotContain("check ", "What it takes away");
  }
}
