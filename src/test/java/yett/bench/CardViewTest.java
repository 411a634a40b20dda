package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

class CardViewTest {
  private static final RuleBase BASE =
      RuleBase.read(KnowledgeSource.folder(Path.of("src/test/resources/every-field")));

  @Test
  void a_cause_is_shown_with_rows_of_all_files_in_figures() {
    assertThat(CardView.of("charger-dead", BASE))
        .containsEntry("cause charger-dead", "Charger does not charge")
        .containsEntry("prior", "0.04")
        .containsEntry("shows battery-rest-voltage", "charged 0, low 0.75, flat 0.25")
        .containsEntry("shows lamp-seen", "lit 0.04, flickers 0.04, dark 0.92")
        .containsEntry("shows charging-voltage", "charging 0.04, too-high 0.06, low 0.2, none 0.7")
        .containsEntry("brings about batteries-low", "0.85")
        .containsEntry("removed by charge-batteries", "0.08")
        // the row of batteries-low there is that of a sound gate: 0.95, 0.02, 0.025, 0.005
        .containsEntry("looks like batteries-low", "best told apart by charging-voltage (91 %)");
  }

  @Test
  void a_check_is_shown_with_its_outcomes_and_every_row() {
    assertThat(CardView.of("lamp-seen", BASE))
        .containsEntry("check lamp-seen", "Is the lamp on the charger lit?")
        .containsEntry("outcome dark", "it is dark")
        .containsEntry("with charger-dead", "lit 0.04, flickers 0.04, dark 0.92")
        .containsEntry("otherwise", "lit 0.75, flickers 0.08, dark 0.17");
    assertThat(CardView.of("charge-batteries", BASE))
        .containsEntry("removes batteries-low", "0.92")
        .containsEntry("removes charger-dead", "0.08");
    assertThat(CardView.of("charger-ded", BASE)).isEmpty();
  }
}
