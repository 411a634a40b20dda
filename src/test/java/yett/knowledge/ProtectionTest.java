package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** What add-ons and other folders try to take away from what keeps people from harm. */
class ProtectionTest {
  private static final SortedMap<String, String> SHIPPED =
      KnowledgeSource.folder(Path.of("knowledge")).files();
  private static final RuleBase BASE = RuleBase.read(() -> SHIPPED);
  private static final YAMLMapper YAML = new YAMLMapper();

  private static final List<CardFile.Document> CARDS = cards();

  private static List<CardFile.Document> cards() {
    List<CardFile.Document> cards = new ArrayList<>();
    SHIPPED.forEach(
        (name, text) -> {
          if (name.endsWith(".yaml") && !name.endsWith(".case.yaml")) {
            cards.addAll(CardFile.read(name, text, new ArrayList<>()));
          }
        });
    return cards;
  }

  private static ObjectNode card(String kind, String id) {
    return (ObjectNode)
        CARDS.stream()
            .map(CardFile.Document::root)
            .filter(c -> c.path(kind).asString("").equals(id))
            .findFirst()
            .orElseThrow()
            .deepCopy();
  }

  private static KnowledgeException refused(String manifest, String card) {
    SortedMap<String, String> files = new TreeMap<>(SHIPPED);
    files.put("quay/add-on.yaml", "add-on: quay\nname: Quay\n" + manifest);
    files.put("quay/card.yaml", card);
    KnowledgeException told =
        catchThrowableOfType(KnowledgeException.class, () -> RuleBase.read(() -> files));
    assertThat(told).as(manifest + card).isNotNull();
    return told;
  }

  private static KnowledgeException replaced(ObjectNode card) {
    String kind = card.propertyNames().iterator().next();
    String manifest = "replaces: {%s: [%s]}\n".formatted(kind, card.get(kind).asString());
    return refused(manifest, YAML.writeValueAsString(card));
  }

  /** Everything that stops, warns, makes safe or proves, and what the stopping rules ask about. */
  static List<String> protecting() {
    return List.copyOf(BASE.safeguards().whole().keySet());
  }

  @Test
  void all_stops_dangers_cautions_set_ups_and_proofs_protect() {
    List<String> all = new ArrayList<>();
    BASE.stops().keySet().forEach(id -> all.add("stop " + id));
    BASE.cautions().keySet().forEach(id -> all.add("caution " + id));
    BASE.setUps().keySet().forEach(id -> all.add("set-up " + id));
    BASE.proofs().forEach(c -> all.add("proof " + c.id()));
    BASE.ordinaryChecks().filter(Check::danger).forEach(c -> all.add("check " + c.id()));
    assertThat(all).hasSizeGreaterThan(40);
    assertThat(protecting())
        .containsAll(all)
        .contains(
            "rule somebody is hurt or caught",
            "rule a leaf that leans is not released",
            "check leaf-plumb", // its reading stops the work
            "site leaf-mass") // a rule asks how heavy the leaf is
        .doesNotContain("check busiest-hour", "repair clean-beam");
  }

  @Test
  void none_of_it_can_be_switched_off() {
    StringBuilder off = new StringBuilder("switches-off:\n");
    Map<String, List<String>> byKind = new TreeMap<>();
    for (String name : protecting()) {
      byKind.computeIfAbsent(kind(name), k -> new ArrayList<>()).add('"' + id(name) + '"');
    }
    byKind.forEach((kind, ids) -> off.append("  " + kind + ": " + ids + "\n"));
    assertThat(refused(off.toString(), "# nothing\n").problems())
        .allMatch(p -> p.file().equals("quay/add-on.yaml") && p.line() > 2)
        .extracting(Problem::message)
        .containsExactlyInAnyOrderElementsOf(
            protecting().stream()
                .map(n -> "the " + quoted(n) + " protects people or is always needed")
                .toList());
  }

  @Test
  void none_of_it_can_be_replaced_or_doubled() {
    List<String> names = protecting().stream().filter(n -> !kind(n).equals("rule")).toList();
    StringBuilder cards = new StringBuilder();
    Map<String, List<String>> byKind = new TreeMap<>();
    for (String name : names) {
      byKind.computeIfAbsent(kind(name), k -> new ArrayList<>()).add(id(name));
      cards.append(YAML.writeValueAsString(card(kind(name), id(name)))); // begins with ---
    }
    StringBuilder replaces = new StringBuilder("replaces:\n");
    byKind.forEach((kind, ids) -> replaces.append("  " + kind + ": " + ids + "\n"));
    assertThat(refused(replaces.toString(), cards.toString()).problems())
        .allMatch(p -> p.file().equals("quay/card.yaml") && p.line() > 0)
        .extracting(Problem::message)
        .containsExactlyElementsOf(
            names(cards.toString()).stream()
                .map(n -> "the " + quoted(n) + " protects people and cannot be replaced")
                .toList());
    assertThat(refused("", cards.toString()).problems())
        .hasSize(names.size())
        .allMatch(p -> p.kind().equals("duplicate-id"));
  }

  private static List<String> names(String cards) {
    return CardFile.read("cards.yaml", cards, new ArrayList<>()).stream()
        .map(d -> Layers.kind(d) + " " + d.root().get(Layers.kind(d)).asString())
        .toList();
  }

  private static String kind(String name) {
    return name.substring(0, name.indexOf(' '));
  }

  private static String id(String name) {
    return name.substring(name.indexOf(' ') + 1);
  }

  private static String quoted(String name) {
    return kind(name) + " \"" + id(name) + "\"";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "repair | tighten-chain | needs   | would lose \"locked-off\" in \"needs\"",
        "repair | tighten-chain | hazards | in \"hazards\"",
        "repair | tighten-chain | proofs  | in \"proofs\"",
        "repair | clean-beam    | entails | would lose \"beam-light\" in \"entails\"",
        "check  | chain-sag     | hazards | in \"hazards\"",
      })
  void what_is_replaced_keeps_its_safeguards(String kind, String id, String list, String message) {
    ObjectNode card = card(kind, id);
    card.remove(list);
    assertThat(replaced(card))
        .hasMessageContaining("quay/card.yaml:")
        .hasMessageContaining(message);
  }

  /** What is bent or loose would pass, or nobody would look. */
  @Test
  void what_an_inspection_looks_at_is_neither_left_out_nor_let_pass() {
    List<String> whole = protecting();
    Check check =
        BASE.ordinaryChecks()
            .filter(c -> !c.measured() && !whole.contains("check " + c.id()))
            .filter(c -> !card("check", c.id()).path("inspect").isEmpty())
            .filter(c -> card("check", c.id()).path("remark").isEmpty())
            .findFirst()
            .orElseThrow();
    String outcome = check.outcomes().get(1).id();
    ObjectNode look = card("check", check.id());
    look.putArray("remark").add(outcome);
    assertThat(replaced(look).problems())
        .extracting(Problem::message)
        .containsExactly(
            "\"%s\" would lose that \"%s\" fails an inspection".formatted(check.id(), outcome));
    ObjectNode unseen = card("check", check.id());
    unseen.remove("inspect");
    assertThat(replaced(unseen).problems())
        .extracting(Problem::message)
        .allMatch(m -> m.matches(".* would lose \"(commissioning|service)\".* in \"inspect\""))
        .isNotEmpty();
  }

  @Test
  void what_is_replaced_is_not_opened_to_others() {
    assertThat(replaced(card("repair", "tighten-chain").put("who", "caller")))
        .hasMessageContaining("would lose \"who: technician\"");
  }

  @Test
  void a_pressing_matter_stays_as_urgent() {
    String id =
        BASE.telephone().pressing().values().stream()
            .filter(p -> p.urgency() == Pressing.Urgency.AT_ONCE)
            .map(Pressing::id)
            .findFirst()
            .orElseThrow();
    assertThat(replaced(card("pressing", id).put("urgency", "next-working-day")))
        .hasMessageContaining("would lose \"urgency: at-once\"");
  }

  @Test
  void an_added_repair_asks_for_the_proofs_of_those_that_it_comes_before() {
    String quick =
        """
        repair: kick-it
        name: Kick it
        removes: {chain-slack: 1.0}
        minutes: 1
        who: caller
        source: none
        """;
    assertThat(refused("", quick))
        .hasMessageContaining("quay/card.yaml:1:")
        .hasMessageContaining("\"kick-it\" lacks the proofs ");
  }

  @Test
  void a_rule_that_speaks_through_a_function_is_not_taken_for_harmless() {
    assertThat(refused("switches-off: {rule: [a dark operator shows no fault]}\n", "# nothing\n"))
        .hasMessageContaining("protects people");
  }

  @Test
  void of_several_rules_with_one_name_each_is_looked_at() {
    SortedMap<String, String> files = new TreeMap<>(SHIPPED);
    files.put(
        "zz/own.drl",
        "package own\nrule \"wires are bare\"\nwhen\nthen\n  insertLogical(new Remark(\"\","
            + " null));\nend\n");
    files.put(
        "quay/add-on.yaml", "add-on: quay\nname: Quay\nswitches-off: {rule: [wires are bare]}\n");
    assertThatThrownBy(() -> RuleBase.read(() -> files)).hasMessageContaining("protects people");
  }

  @Test
  void another_folder_lacks_what_it_leaves_out_or_weakens() {
    SortedMap<String, String> files = new TreeMap<>(SHIPPED);
    files.replaceAll((name, text) -> text.replaceAll("(?m)^danger: true$", "danger: false"));
    files.remove("battery/stops.drl");
    files.replaceAll(
        (name, text) -> name.endsWith("beam-dirty.yaml") ? text.replace("moving-leaf", "") : text);
    RuleBase other = new RuleBaseFiles().look(files).base();
    assertThat(other.safeguards().lacks(BASE.safeguards()))
        .contains("check danger-person", "repair clean-beam")
        .anyMatch(name -> name.startsWith("rule batteries linked wrongly"));
    assertThat(BASE.safeguards().lacks(BASE.safeguards())).isEmpty();
  }

  @Test
  void what_follows_a_repair_and_what_calls_somebody_at_once_stay_on() {
    String urgent =
        BASE.telephone().pressing().values().stream()
            .filter(p -> p.urgency() == Pressing.Urgency.AT_ONCE)
            .map(Pressing::id)
            .findFirst()
            .orElseThrow();
    assertThat(
            refused(
                    "switches-off: {check: [beam-light], pressing: [" + urgent + "]}\n",
                    "# nothing\n")
                .problems())
        .extracting(Problem::message)
        .containsExactly(
            "the check \"beam-light\" protects people or is always needed",
            "the pressing \"" + urgent + "\" protects people or is always needed");
  }
}
