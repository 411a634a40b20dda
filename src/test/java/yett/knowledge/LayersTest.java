package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The add-on of the documents over the shipped cards, and what may go wrong over a few sound ones.
 */
class LayersTest {
  private static final Path EXAMPLE = Path.of("docs/examples/harrow-quay");
  private static final KnowledgeSource SHIPPED = KnowledgeSource.folder(Path.of("knowledge"));

  /** The sound cards with an add-on in the folder "quay". */
  private static RuleBase read(String manifest, String card) {
    Map<String, String> files = new TreeMap<>(sound());
    files.put("quay/add-on.yaml", "add-on: quay\nname: The quay\n" + manifest);
    files.put("quay/card.yaml", card);
    return RuleBase.read(() -> new TreeMap<>(files));
  }

  private static Map<String, String> sound() {
    return KnowledgeSource.folder(Path.of("src/test/resources/sound-knowledge")).files();
  }

  private static List<String> problems(String manifest, String card) {
    KnowledgeException told =
        catchThrowableOfType(KnowledgeException.class, () -> read(manifest, card));
    assertThat(told).isNotNull();
    return told.problems().stream().map(p -> p.toString().lines().findFirst().orElse("")).toList();
  }

  private static final String REPAIR =
      """
      repair: tighten-chain
      name: Take up the chain as we do it here
      removes: {chain-slack: 0.8, gate-dragging: 0.5}
      minutes: 20
      needs: [locked-off]
      hazards: [pinch-point]
      source: common practice
      """;

  @Test
  void rules_and_tables_that_an_add_on_brings_are_named() {
    TreeMap<String, String> files =
        new TreeMap<>(KnowledgeSource.layered(SHIPPED, List.of(EXAMPLE)).files());
    files.put(EXAMPLE + "/rules/quay.drl", "package quay\n");
    files.put(EXAMPLE + "/ranges.table.csv", "rule,check\n");
    assertThat(RuleBase.read(() -> files).addOns().get(0).words())
        .contains(", rules of rules/quay.drl, rules of ranges.table.csv; replaces");
  }

  @Test
  void the_example_adds_replaces_and_switches_off() {
    RuleBase plain = RuleBase.read(SHIPPED);
    RuleBase layered = RuleBase.read(KnowledgeSource.layered(SHIPPED, List.of(EXAMPLE)));
    assertThat(layered.addOns()).hasSize(1);
    AddOn addOn = layered.addOns().get(0);
    assertThat(addOn.adds())
        .containsExactly("history storm-tide", "cause spray-on-beam", "repair rinse-beam");
    assertThat(addOn.replaces()).containsExactly("repair clean-beam");
    assertThat(addOn.switchesOff()).containsExactly("cause rodents-chewed");

    assertThat(layered.repairs().get("clean-beam").source())
        .isEqualTo("considered judgement; replaced by add-on Harrow Quay estate");
    assertThat(layered.causes().get("spray-on-beam").source())
        .isEqualTo("considered judgement; add-on Harrow Quay estate");
    assertThat(layered.checks().get("beam-light").likelihood()).containsKey("spray-on-beam");
    assertThat(layered.histories().get("storm-tide").odds())
        .containsEntry("spray-on-beam", 12.0)
        .containsEntry("beam-dirty", 2.0);

    assertThat(layered.causes()).doesNotContainKey("rodents-chewed");
    assertThat(layered.checks().values())
        .noneMatch(c -> c.likelihood().containsKey("rodents-chewed"));
    assertThat(plain.checks().get("beam-half-covered").likelihood()).containsKey("rodents-chewed");
    assertThat(layered.fingerprint()).isNotEqualTo(plain.fingerprint());
  }

  @Test
  void it_does_not_matter_where_the_folder_lies() {
    RuleBase here = RuleBase.read(KnowledgeSource.layered(SHIPPED, List.of(EXAMPLE)));
    RuleBase there =
        RuleBase.read(KnowledgeSource.layered(SHIPPED, List.of(EXAMPLE.toAbsolutePath())));
    assertThat(there.fingerprint()).isEqualTo(here.fingerprint());
    assertThat(there.addOns().get(0).words()).isEqualTo(here.addOns().get(0).words());
  }

  @Test
  void a_card_of_the_same_name_is_no_replacement_until_it_is_said_to_be_one() {
    assertThat(problems("", REPAIR))
        .containsExactly(
            "quay/card.yaml:1:1: \"tighten-chain\" is a repair of the rule base already");
    RuleBase replaced = read("replaces: {repair: [tighten-chain]}\n", REPAIR);
    assertThat(replaced.repairs().get("tighten-chain").minutes()).isEqualTo(20);
  }

  @Test
  void what_is_not_there_cannot_be_replaced_or_switched_off() {
    assertThat(problems("replaces: {repair: [tihgten-chain]}\n", "# nothing\n"))
        .containsExactly(
            "quay/add-on.yaml:3:12: \"tihgten-chain\" is not both in the rule base and in this"
                + " folder");
    assertThat(problems("switches-off: {cause: [chian-slack]}\n", "# nothing\n"))
        .containsExactly("quay/add-on.yaml:3:16: there is no cause \"chian-slack\" to switch off");
    assertThat(problems("switches-off: {couse: [chain-slack]}\n", "# nothing\n"))
        .containsExactly("quay/add-on.yaml:3:16: \"couse\" is not a kind of card");
  }

  @Test
  void a_repair_that_went_with_its_cause_counts_as_switched_off() {
    RuleBase without = read("switches-off: {cause: [chain-slack, gate-dragging]}\n", "# nothing\n");
    assertThat(without.repairs()).doesNotContainKey("tighten-chain");
    assertThat(without.switchedOff("tighten-chain")).isTrue();
    assertThat(read("", "# nothing\n").switchedOff("tighten-chain")).isFalse();
  }

  @Test
  void a_repair_that_a_cause_of_the_add_on_names_stays() {
    RuleBase base =
        read(
            "switches-off: {cause: [chain-slack, gate-dragging]}\n",
            "cause: chain-hangs-low\nname: Chain hangs low\nprior: 0.05\n"
                + "removed-by: {tighten-chain: 0.9}\nsource: test\n");
    assertThat(base.repairs().get("tighten-chain").removes()).containsOnlyKeys("chain-hangs-low");
  }

  @Test
  void a_version_alone_changes_no_fingerprint() {
    RuleBase first = read("version: \"1.0\"\n", "# nothing\n");
    RuleBase second = read("version: \"1.1\"\n", "# nothing\n");
    RuleBase none = read("", "# nothing\n");
    assertThat(second.fingerprint()).isEqualTo(first.fingerprint()).isEqualTo(none.fingerprint());
    assertThat(read("", "# something\n").fingerprint()).isNotEqualTo(none.fingerprint());
  }

  @Test
  void a_repair_whose_only_cause_is_switched_off_goes_with_it() {
    RuleBase with = read("", "# nothing\n");
    assertThat(with.checks().get("chain-looks").likelihood()).containsKey("chain-slack");
    assertThat(with.repairs().values()).anyMatch(r -> r.removes().containsKey("chain-slack"));
    RuleBase without = read("switches-off: {cause: [chain-slack]}\n", "# nothing\n");
    assertThat(without.causes()).doesNotContainKey("chain-slack");
    assertThat(without.checks().get("chain-looks").likelihood()).doesNotContainKey("chain-slack");
    assertThat(without.repairs().values())
        .noneMatch(r -> r.removes().isEmpty() || r.removes().containsKey("chain-slack"));
  }

  @Test
  void of_two_add_ons_on_one_card_one_must_say_that_it_lies_over_the_other() {
    Map<String, String> files = new TreeMap<>(sound());
    files.put("a/add-on.yaml", "add-on: a\nname: A\nreplaces: {repair: [tighten-chain]}\n");
    files.put("a/card.yaml", REPAIR);
    files.put("b/card.yaml", REPAIR.replace("20", "30"));
    String second = "add-on: b\nname: B\nreplaces: {repair: [tighten-chain]}\n";
    files.put("b/add-on.yaml", second);
    assertThatThrownBy(() -> RuleBase.read(() -> new TreeMap<>(files)))
        .hasMessageContaining("the add-on \"a\" has something to say on the repair tighten-chain");
    files.put("b/add-on.yaml", second + "over: [a]\n");
    RuleBase both = RuleBase.read(() -> new TreeMap<>(files));
    assertThat(both.repairs().get("tighten-chain").minutes()).isEqualTo(30);
    assertThat(both.addOns()).extracting(AddOn::id).containsExactly("a", "b");
    // Named the other way about, it is a that has the last word.
    files.put("a/add-on.yaml", files.get("a/add-on.yaml") + "over: [b]\n");
    files.put("b/add-on.yaml", second);
    RuleBase other = RuleBase.read(() -> new TreeMap<>(files));
    assertThat(other.repairs().get("tighten-chain").minutes()).isEqualTo(20);
  }

  @Test
  void a_folder_without_a_manifest_is_no_add_on() {
    Path chain = Path.of("knowledge/chain");
    assertThatThrownBy(() -> KnowledgeSource.layered(SHIPPED, List.of(chain)).files())
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining("this folder is not an add-on: it has no add-on.yaml");
  }

  private static final String EFFECT =
      """
      cause: chain-dry
      name: Chain runs dry
      prior: 0.05
      leads-to: {drive-strains: 0.5}
      removed-by: {tighten-chain: 0.1}
      source: test
      ---
      effect: drive-strains
      name: The drive strains
      shows: {chain-looks: {straight: 0.4, low: 0.6}}
      source: test
      """;

  private static RuleBase overAnEffect(String manifest, String card) {
    Map<String, String> files = new TreeMap<>(sound());
    files.put("effects.yaml", EFFECT);
    files.put("quay/add-on.yaml", "add-on: quay\nname: The quay\n" + manifest);
    files.put("quay/card.yaml", card);
    return RuleBase.read(() -> new TreeMap<>(files));
  }

  @Test
  void an_add_on_brings_effects_and_causes_of_those_that_are_there() {
    RuleBase base = read("", EFFECT);
    assertThat(base.addOns().get(0).adds())
        .containsExactly("cause chain-dry", "effect drive-strains");
    assertThat(base.checks().get("chain-looks").likelihood().get("chain-dry"))
        .containsExactly(new double[] {0.7, 0.3}, within(1e-12));
    assertThat(base.effects().get("drive-strains").source()).isEqualTo("test; add-on The quay");
  }

  @Test
  void what_leads_to_an_effect_that_is_switched_off_leads_to_it_no_more() {
    RuleBase base = overAnEffect("switches-off: {effect: [drive-strains]}", "");
    assertThat(base.effects()).isEmpty();
    assertThat(base.causes().get("chain-dry").leadsTo()).isEmpty();
    assertThat(base.checks().get("chain-looks").likelihood()).doesNotContainKey("chain-dry");
  }

  @Test
  void an_effect_may_lose_all_that_it_comes_from_and_shows() {
    RuleBase base =
        overAnEffect("switches-off: {cause: [chain-dry, chain-slack], check: [chain-looks]}", "");
    assertThat(base.effects().get("drive-strains").shows()).isEmpty();
    assertThat(base.checks()).doesNotContainKey("chain-looks");
  }

  @Test
  void an_effect_that_is_replaced_shows_what_the_add_on_says() {
    RuleBase base =
        overAnEffect(
            "replaces: {effect: [drive-strains]}",
            """
            effect: drive-strains
            name: The drive strains
            shows: {chain-looks: {straight: 0.2, low: 0.8}}
            source: test
            """);
    assertThat(base.checks().get("chain-looks").likelihood().get("chain-dry"))
        .containsExactly(new double[] {0.6, 0.4}, within(1e-12));
  }
}
