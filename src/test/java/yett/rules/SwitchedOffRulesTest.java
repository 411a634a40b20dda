package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.knowledge.KnowledgeException;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class SwitchedOffRulesTest {
  private static final Map<String, String> SHIPPED =
      KnowledgeSource.folder(Path.of("knowledge")).files();

  private static RuleBase without(String rule) {
    return switchedOff("{rule: [\"" + rule + "\"]}");
  }

  private static RuleBase switchedOff(String cards) {
    SortedMap<String, String> files = new TreeMap<>(SHIPPED);
    files.put("quay/add-on.yaml", "add-on: quay\nname: Quay\nswitches-off: " + cards + "\n");
    return RuleBase.read(() -> files);
  }

  private static Judgement judge(RuleBase base) {
    return judge(base, Rules.site("leaf-speed", "0.2 m/s"), Rules.site("usage-class", "class-i"));
  }

  private static Judgement judge(RuleBase base, Fact... facts) {
    RuleEngine engine =
        base == Rules.BASE
            ? Shipped.EXPERTISE.rules()
            : RuleEngine.of(base, new RuleCache(Path.of("target/rule-cache")));
    try (Judge judge = engine.newJudge()) {
      return judge.judge(Set.of(facts));
    }
  }

  @Test
  void a_rule_that_an_add_on_switched_off_does_not_speak() {
    String coasting = "how far a leaf coasts";
    assertThat(Rules.speaking(judge(Rules.BASE))).contains(coasting);
    RuleBase without = without(coasting);
    Judgement judgement = judge(without);
    assertThat(judgement.expectation("coasting")).isEmpty();
    assertThat(judgement.expectation("mid-travel-speed")).isPresent();
    assertThat(without.addOns().get(0).words()).endsWith("switches off rule " + coasting);
  }

  @Test
  void nor_does_a_row_of_a_table() {
    RuleBase without = without("how often a gate for a few homes opens in its busiest hour");
    assertThat(judge(Rules.BASE).expectation("busiest-hour")).isPresent();
    assertThat(judge(without).expectation("busiest-hour")).isEmpty();
  }

  @Test
  void nor_does_a_row_that_moves_odds() {
    Fact lorry = Rules.site("leaf-mass", "1200 kg");
    assertThat(judge(Rules.BASE, lorry).oddsFactors()).containsKey("gearbox-worn");
    assertThat(judge(without("a heavy leaf tries its drive"), lorry).oddsFactors())
        .doesNotContainKey("gearbox-worn")
        .containsKey("chain-slack");
  }

  @Test
  void a_row_is_not_kept_for_a_word_that_a_stop_has_as_well() {
    String row = "what a gate on mains draws standing"; // "mains" is a hazard, too
    assertThat(without(row).addOns().get(0).switchesOff()).containsExactly("rule " + row);
  }

  @Test
  void what_a_row_says_of_a_check_that_is_off_is_no_slip() {
    Fact works = Rules.said(2, "which-commands", "all-fail");
    RuleBase without = switchedOff("{check: [near-by, busiest-hour]}");
    assertThat(DecisionTables.problems(without)).isEmpty();
    assertThat(judge(without, works).contradictions()).isEmpty();
  }

  @Test
  void answers_that_cannot_both_be_right_stay_named() {
    for (String row :
        List.of("a parted chain moves no leaf", "no mains at the panel, none at the operator")) {
      assertThatThrownBy(() -> without(row)).hasMessageContaining("protects people");
    }
  }

  @Test
  void what_a_rule_says_of_a_cause_that_is_off_is_not_heard() {
    Fact old = Rules.site("battery-age", "7 years");
    assertThat(judge(Rules.BASE, old).oddsFactors()).containsKey("batteries-worn");
    assertThat(judge(switchedOff("{cause: [batteries-worn]}"), old).oddsFactors())
        .doesNotContainKey("batteries-worn");
  }

  @Test
  void rules_that_protect_people_stay_on() {
    List<String> rules = new ArrayList<>(Rules.of("stops"));
    rules.add("an answer in words means the outcome that it names");
    assertThat(rules).hasSizeGreaterThan(5);
    String all = rules.stream().collect(Collectors.joining("\", \"", "{rule: [\"", "\"]}"));
    KnowledgeException told =
        catchThrowableOfType(KnowledgeException.class, () -> switchedOff(all));
    assertThat(told.problems())
        .extracting(Problem::message)
        .containsExactlyElementsOf(
            rules.stream()
                .map(r -> "the rule \"" + r + "\" protects people or is always needed")
                .toList());
    assertThatThrownBy(() -> without("how far a leaf costs"))
        .hasMessageContaining("there is no rule \"how far a leaf costs\" to switch off")
        .hasMessageContaining("Maybe \"how far a leaf coasts\"");
  }

  @Test
  void a_row_of_the_same_name_gives_no_leave_to_switch_off_a_stop() {
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    String stop = "somebody is hurt or caught";
    files.put(
        "quay/add-on.yaml", "add-on: quay\nname: Quay\nswitches-off: {rule: [\"" + stop + "\"]}\n");
    files.put(
        "quay/own.table.csv",
        "rule,check,if usage-class,low,high,how,because,source\n"
            + stop
            + ",busiest-hour,class-i,0,12,so,it is so,common practice\n");
    assertThatThrownBy(() -> RuleBase.read(() -> files))
        .hasMessageContaining("quay/add-on.yaml:3:")
        .hasMessageContaining("protects people");
  }
}
