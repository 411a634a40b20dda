package yett.command.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class LabelledCardsTest {
  private static Map<String, String> numbers(RuleBase base) {
    return new LabelledCards(base)
        .all().stream()
            .filter(t -> t.label().matches("r?\\d+"))
            .collect(Collectors.toMap(t -> t.card().id(), LabelledCards.Thing::label));
  }

  /** The new check stands first in its area, before all that had a number. */
  @Test
  void a_new_card_shifts_no_number() {
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    files.put(
        "battery/aa.yaml",
        """
        check: quay-lid-look
        ask: How does the lid sit?
        area: battery
        minutes: 1
        who: caller
        outcomes: {shut: it is shut, open: it stands open}
        likelihood:
          batteries-low: {shut: 0.7, open: 0.3}
        otherwise: {shut: 0.95, open: 0.05}
        source: considered judgement
        """);
    Map<String, String> more = numbers(RuleBase.read(() -> files));
    Map<String, String> before = numbers(Shipped.BASE);
    assertThat(more).containsAllEntriesOf(before).hasSize(before.size() + 1);
    assertThat(before.values()).doesNotHaveDuplicates().hasSizeGreaterThan(200);
  }

  @Test
  void a_list_says_which_state_a_check_needs() {
    LabelledCards labels = new LabelledCards(Shipped.BASE);
    LabelledCards.Thing sag = labels.named("chain-sag").orElseThrow();
    String locked = labels.setUps(java.util.List.of("locked-off"), Shipped.BASE);
    assertThat(locked).matches("s\\d+");
    assertThat(
            new ThingViews(Shipped.BASE, labels).list("Checks", java.util.List.of(sag)).toString())
        .contains("needs " + locked);
  }
}
