package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.testing.WithEffects;

class CardViewTest {
  private static final RuleBase BASE =
      RuleBase.read(KnowledgeSource.folder(Path.of("src/test/resources/every-field")));

  @Test
  void a_cause_is_shown_with_rows_of_all_files_in_figures() {
    assertThat(CardView.of("charger-dead", BASE))
        .containsEntry("cause charger-dead", "Charger does not charge")
        .containsEntry("prior", "0.04: at 4 of a hundred faulty gates")
        .containsEntry("shows battery-rest-voltage", "charged 0, low 0.75, flat 0.25")
        .containsEntry("shows lamp-seen", "lit 0.072, flickers 0.008, dark 0.92")
        .containsEntry("shows charging-voltage", "charging 0.04, too-high 0.06, low 0.2, none 0.7")
        .containsEntry("brings about batteries-low", "0.85")
        .containsEntry("removed by charge-batteries", "0.08")
        // the row of batteries-low there is that of a sound gate: 0.95, 0.02, 0.025, 0.005
        // Beyond a sound gate both show low 0.33, flat 0.24 and are called dead without mains
        // (0.29): 0.86 of all 3.32 that either shows there, on the lamp and while it is charged.
        .containsEntry(
            "looks like batteries-low",
            "26 % of what would be seen is the same; best told apart by charging-voltage (91 %)");
  }

  @Test
  void a_cause_that_shares_nothing_looks_like_nothing() {
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("src/test/resources/every-field")).files());
    files.put(
        "more.yaml",
        """
        cause: lid-open
        name: Lid stands open
        area: battery
        prior: 0.01
        removed-by: {charge-batteries: 0.5}
        source: considered judgement
        ---
        check: lid-look
        ask: How does the lid sit?
        area: battery
        minutes: 1
        who: caller
        outcomes:
          shut: it is shut
          open: it stands open
        likelihood:
          lid-open: {shut: 0.05, open: 0.95}
        otherwise: {shut: 0.99, open: 0.01}
        source: considered judgement
        """);
    assertThat(CardView.of("lid-open", RuleBase.read(() -> files)))
        .containsEntry("looks like", "nothing: no other cause shares 25 % of what would be seen")
        .doesNotContainKey("looks like charger-dead");
  }

  @Test
  void a_check_is_shown_with_its_outcomes_and_every_row() {
    assertThat(CardView.of("lamp-seen", BASE))
        .containsEntry("check lamp-seen", "Is the lamp on the charger lit?")
        .containsEntry("outcome dark", "it is dark")
        .containsEntry("with charger-dead", "lit 0.072, flickers 0.008, dark 0.92")
        .containsEntry("otherwise", "lit 0.75, flickers 0.08, dark 0.17");
    assertThat(CardView.of("charge-batteries", BASE))
        .containsEntry("removes batteries-low", "0.92")
        .containsEntry("removes charger-dead", "0.08");
    assertThat(CardView.of("charger-ded", BASE)).isEmpty();
  }

  @Test
  void a_card_says_who_may_and_why() {
    assertThat(CardView.of("set-selector", BASE))
        .containsEntry(
            "who",
            "for a technician, because it is work on the input selector; the firm may name"
                + " others");
    assertThat(CardView.of("charge-batteries", BASE)).containsEntry("who", "for a caller");
  }

  @Test
  void a_cause_is_shown_with_its_effects_and_each_row_with_where_it_comes_from() {
    assertThat(CardView.of("rollers-worn", WithEffects.BASE))
        .containsEntry("leads to more-force", "0.99, always: The drive needs more force")
        .containsEntry("leads to leaf-shakes", "0.65, often: The leaf shakes")
        .containsEntry(
            "leads on to runs-hot", "0.594, often, by way of more-force: The drive gets hot")
        .containsEntry("shows slow", "unsaid 0.604, said 0.396; by more-force")
        .containsEntry("shows leaf-look", "quiet 0.1, shakes 0.9; its own mark")
        .containsEntry(
            "shows running-current",
            // 0.01 x 1 + 0.99 x 0.3 x (0.4 + 0.6 x 0.8), and so on for the sums
            "ordinary 0.271, high 0.63, very-high 0.099; by more-force, runs-hot");
    // 1 - 0.75 x (1 - 0.9 x 0.6)
    assertThat(CardView.of("track-dirty", WithEffects.BASE))
        .containsEntry(
            "leads to runs-hot", "0.25, sometimes, with what follows 0.655: The drive gets hot");
    assertThat(CardView.of("chain-slack", WithEffects.BASE))
        .containsEntry("shows chain-looks", "straight 0.2, low 0.8");
  }

  @Test
  void an_effect_is_shown_with_what_it_comes_of_what_shows_it_and_what_it_makes() {
    assertThat(CardView.of("more-force", WithEffects.BASE))
        .containsExactly(
            Map.entry("effect more-force", "The drive needs more force"),
            Map.entry("comes of rollers-worn", "0.99, always: Rollers worn"),
            Map.entry("comes of track-dirty", "0.9, nearly always: Track dirty"),
            Map.entry("seen by slow", "unsaid 0.6, said 0.4"),
            Map.entry("seen by running-current", "ordinary 0.3, high 0.6, very-high 0.1"),
            Map.entry("makes runs-hot", "0.6, often: The drive gets hot"));
    assertThat(CardView.of("runs-hot", WithEffects.BASE))
        .containsEntry("comes of effect more-force", "0.6, often: The drive needs more force");
    assertThat(CardView.of("motor-touch", WithEffects.BASE))
        .containsEntry("with effect runs-hot", "cool 0.3, hot 0.7")
        .containsEntry("with rollers-worn", "cool 0.584, hot 0.416; by runs-hot");
    assertThat(CardView.ids(WithEffects.BASE)).contains("runs-hot");
  }

  @Test
  void an_effect_is_found_by_id_and_by_words_of_its_name() {
    List<Candidate> effects = new Vocabulary(WithEffects.BASE).all().get("effects");
    assertThat(Candidate.with("needs force", effects))
        .extracting(Candidate::id)
        .containsExactly("more-force");
    assertThat(Candidate.with("leaf-shakes", effects))
        .extracting(Candidate::id)
        .containsExactly("leaf-shakes");
  }
}
