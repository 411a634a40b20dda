package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.rules.Rules.Example;

/** Rules lie beside the cards that they speak of, in files named by what they conclude. */
class EveryRuleTest {
  private static final String KINDS =
      "core|expectations|odds|contradictions|sense|stops|follow-ups|assumptions|stands";

  static Stream<Example> examples() {
    return Stream.of(
            ContradictionRulesTest.examples(),
            CoreRulesTest.examples(),
            DecisionTablesTest.examples(),
            DeviceRulesTest.examples(),
            ElectricalRulesTest.examples(),
            ExpectationRulesTest.examples(),
            FollowUpRulesTest.examples(),
            MechanicalRulesTest.examples(),
            OddsRulesTest.examples(),
            SenseRulesTest.examples(),
            StopRulesTest.examples())
        .flatMap(s -> s);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "core",
        "expectations",
        "odds",
        "contradictions",
        "sense",
        "stops",
        "follow-ups",
        "assumptions",
        "stands"
      })
  void every_rule_is_shown_by_an_example(String kind) {
    assertThat(Rules.speaking(examples())).containsAll(Rules.of(kind));
  }

  @Test
  void every_rule_stands_once_in_a_file_of_a_known_kind() {
    List<String> inFiles = new ArrayList<>();
    Map<String, List<String>> files = Rules.files("(" + KINDS + ")");
    files.values().forEach(inFiles::addAll);
    assertThat(Rules.names()).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(inFiles);
    assertThat(Stream.of(Rules.BASE.rules(), Rules.BASE.tables()).flatMap(f -> f.keySet().stream()))
        .containsExactlyInAnyOrderElementsOf(files.keySet());
  }

  @Test
  void what_belongs_to_no_area_is_the_core_alone() {
    assertThat(Rules.files("[a-z-]+").keySet())
        .filteredOn(file -> file.startsWith("rules/"))
        .containsExactly("rules/core.drl");
  }
}
