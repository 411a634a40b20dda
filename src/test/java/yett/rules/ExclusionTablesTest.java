package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.KnowledgeException;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Contradiction;

class ExclusionTablesTest {
  private static final String HEADING =
      "rule,if batteries,first check,first answer,second check,second answer,because,source\n";
  private static final String ROW =
      "r,none,display-lit,steady,mains-at-terminals,below 50 V,it is so,common practice\n";

  private static RuleBase with(String rows) {
    return Rules.BASE.ruledBy(
        Collections.emptySortedMap(),
        new TreeMap<>(Map.of("x.table.csv", HEADING + rows)),
        List.of());
  }

  private static List<String> problems(String rows) {
    return DecisionTables.problems(with(rows)).stream().map(Problem::message).toList();
  }

  private static List<Contradiction> contradictions(String rows, Fact... facts) {
    RuleEngine engine = RuleEngine.of(with(rows), new RuleCache(Path.of("target/rule-cache")));
    try (Judge judge = engine.newJudge()) {
      return judge.judge(Set.of(facts)).contradictions();
    }
  }

  private static final Fact NO_BATTERIES = Rules.site("batteries", "none");
  private static final Fact LIT = Rules.said(8, "display-lit", "steady");
  private static final Fact NO_MAINS = Rules.read(3, "mains-at-terminals", "4 V");

  @Test
  void two_such_answers_are_named_in_the_order_in_which_they_were_given() {
    assertThat(contradictions(ROW, NO_BATTERIES, LIT, NO_MAINS))
        .containsExactly(
            new Contradiction(
                3, 8, new Reason("r", "it is so", "common practice", List.of("batteries"))));
  }

  @Test
  void other_answers_and_other_gates_are_no_contradiction() {
    assertThat(contradictions(ROW, NO_BATTERIES, LIT)).isEmpty();
    assertThat(contradictions(ROW, Rules.site("batteries", "agm"), LIT, NO_MAINS)).isEmpty();
    assertThat(contradictions(ROW, LIT, NO_MAINS)).isEmpty();
    assertThat(contradictions(ROW.replace("none", ""), LIT, NO_MAINS)).hasSize(1);
    Fact some = Rules.read(3, "mains-at-terminals", "50 V");
    assertThat(contradictions(ROW, NO_BATTERIES, LIT, some)).isEmpty();
    Fact dark = Rules.said(8, "display-lit", "dark");
    assertThat(contradictions(ROW, NO_BATTERIES, dark, NO_MAINS)).isEmpty();
    Fact afterARepair =
        Rules.read(3, 1, yett.knowledge.Role.TECHNICIAN, "mains-at-terminals", "4 V");
    assertThat(contradictions(ROW, NO_BATTERIES, LIT, afterARepair)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "display-lt,steady,mains-lamp,shown    | cell C2: \"display-lt\" is not a check",
        "display-lit,stedy,mains-lamp,shown    | cell D2: \"stedy\" is not an outcome of"
            + " \"display-lit\"",
        "display-lit,steady,mains-lmp,shown    | cell E2: \"mains-lmp\" is not a check",
        "display-lit,steady,mains-lamp,        | cell F2: \"\" is not an outcome of \"mains-lamp\"",
        "push-force,below 5,mains-lamp,shown   | cell D2: \"5\" has no unit; write 5 N",
        "display-lit or mains-lamp,any,mains-lamp,shown | cell D2: this does not mean the same",
      })
  void a_wrong_cell_is_told_with_its_place(String cells, String message) {
    assertThat(problems("r,," + cells + ",it is so,common practice\n"))
        .singleElement()
        .asString()
        .startsWith(message);
  }

  @Test
  void a_cell_that_is_no_text_for_people_is_refused() {
    String hostile = "\"x\"\"), because(drools))); System.exit(1); //\"";
    String[] cells = ROW.strip().split(",");
    for (int column = 0; column < cells.length; column++) {
      String[] changed = cells.clone();
      changed[column] = hostile;
      String rows = String.join(",", changed) + "\n";
      assertThat(problems(rows)).as(rows).isNotEmpty();
      assertThatThrownBy(() -> DecisionTables.rows(with(rows)))
          .isInstanceOf(KnowledgeException.class);
    }
  }
}
