package yett.command.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.knowledge.Check;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Repair;
import yett.knowledge.Role;
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

  /** Enter takes the first, and a look should never begin with a repair. */
  @Test
  void who_wants_to_look_is_offered_checks_before_work() {
    List<LabelledCards.Thing> found = new LabelledCards(Shipped.BASE).meant("look in the pocket");
    assertThat(found).isNotEmpty();
    assertThat(found.get(0).card()).isInstanceOf(Check.class);
    assertThat(new LabelledCards(Shipped.BASE).meant("clear the pocket").get(0).card())
        .isInstanceOf(Repair.class);
  }

  @Test
  void a_list_says_which_state_a_check_needs() {
    LabelledCards labels = new LabelledCards(Shipped.BASE);
    LabelledCards.Thing sag = labels.named("chain-sag").orElseThrow();
    String locked = labels.setUps(java.util.List.of("locked-off"), Shipped.BASE);
    assertThat(locked).matches("s\\d+");
    assertThat(
            new ThingViews(Shipped.BASE, labels, Role.ELECTRICIAN)
                .list("Checks", java.util.List.of(sag))
                .toString())
        .contains("needs " + locked);
  }

  @Test
  void a_list_says_who_may_do_what_the_trainee_may_not() {
    LabelledCards labels = new LabelledCards(Shipped.BASE);
    List<LabelledCards.Thing> setUps =
        labels.all().stream().filter(t -> t.label().matches("s\\d+")).toList();
    assertThat(new ThingViews(Shipped.BASE, labels, Role.TRAINEE).list("S", setUps).toString())
        .contains(" out, for a technician");
    assertThat(new ThingViews(Shipped.BASE, labels, Role.TECHNICIAN).list("S", setUps).toString())
        .doesNotContain("technician");
  }
}
