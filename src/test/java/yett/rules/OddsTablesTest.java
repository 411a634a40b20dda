package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static yett.rules.Rules.happened;
import static yett.rules.Rules.site;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.AddOn;
import yett.knowledge.KnowledgeException;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Odds;

class OddsTablesTest {
  private static final String HEADING =
      "rule,if beams,if grade,happened,not happened,odds,because,source\n";

  private static RuleBase with(String rows, AddOn... addOns) {
    return Rules.BASE.ruledBy(
        Collections.emptySortedMap(),
        new TreeMap<>(Map.of("x.table.csv", HEADING + rows)),
        List.of(addOns));
  }

  private static String row(String beams, String grade, String happened, String not) {
    return String.join(
        ",",
        "r",
        Objects.toString(beams, ""),
        Objects.toString(grade, ""),
        Objects.toString(happened, ""),
        Objects.toString(not, ""),
        "\"beam-dirty 1.5, chain-slack 0.25\",it is so,common practice\n");
  }

  private static List<String> problems(String rows) {
    return DecisionTables.problems(with(rows)).stream().map(Problem::message).toList();
  }

  @Test
  void every_cause_of_a_row_is_moved_by_its_factor_for_the_reason_of_the_row() {
    RuleEngine engine =
        RuleEngine.of(
            with(row("two", null, null, null)), new RuleCache(Path.of("target/rule-cache")));
    Reason reason = new Reason("r", "it is so", "common practice", List.of("beams"));
    try (Judge judge = engine.newJudge()) {
      assertThat(judge.judge(Set.of(site("beams", "two"))).odds())
          .containsExactly(
              new Odds("beam-dirty", 1.5, reason), new Odds("chain-slack", 0.25, reason));
      assertThat(judge.judge(Set.of()).conclusions()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // grade of the gate and what happened; grade, happened and not happened of the row;
        // whether it speaks
        "1 %    |                           | from 1 %               |           |           |"
            + " true",
        "0.9 %  |                           | from 1 %               |           |           |"
            + " false",
        "-2 %   |                           | up to -2 %             |           |           |"
            + " true",
        "-1.9 % |                           | up to -2 %             |           |           |"
            + " false",
        "-2 %   |                           | up to -2 % or from 2 % |           |           |"
            + " true",
        "2 %    |                           | up to -2 % or from 2 % |           |           |"
            + " true",
        "0 %    |                           | up to -2 % or from 2 % |           |           |"
            + " false",
        "0 %    | heavy-rain                |                        | heavy-rain|           |"
            + " true",
        "0 %    | strong-wind               |                        | heavy-rain|           |"
            + " false",
        "0 %    | strong-wind               |         | heavy-rain or strong-wind |          |"
            + " true",
        "0 %    | heavy-rain strong-wind    |         | heavy-rain or strong-wind |          |"
            + " true",
        "0 %    | heavy-rain                |         | heavy-rain and strong-wind |         |"
            + " false",
        "0 %    | heavy-rain strong-wind    |         | heavy-rain and strong-wind |         |"
            + " true",
        "0 %    | heavy-rain cold-snap      |         | heavy-rain                | cold-snap |"
            + " false",
        "1 %    | strong-wind               | from 1 %   |              | cold-snap or"
            + " heavy-rain | true",
        "1 %    | heavy-rain                | from 1 %   |              | cold-snap or"
            + " heavy-rain | false",
        "1 %    | heavy-rain                | from 2 %   | heavy-rain   |           | false",
      })
  void a_row_speaks_where_all_of_it_holds(
      String grade, String lately, String ifGrade, String happened, String not, boolean speaks) {
    Set<Fact> gate = new HashSet<>(Set.of(site("grade", grade)));
    if (lately != null) {
      Arrays.stream(lately.split(" ")).forEach(history -> gate.add(happened(history)));
    }
    Row row = DecisionTables.rows(with(row(null, ifGrade, happened, not))).get(0);
    gate.removeIf(fact -> !row.concerns(fact));
    assertThat(row.speaks(gate)).isEqualTo(speaks);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "two,,,,beam-dity 1.5  | cell F2: \"beam-dity\" is not a known cause. Maybe \"beam-dirty\"",
        "two,,,,beam-dirty     | cell F2: \"beam-dirty\" is not a cause with a factor; write",
        "two,,,,beam-dirty 0   | cell F2: \"beam-dirty 0\" is not a cause with a factor; write",
        "two,,,,beam-dirty 101 | cell F2: \"beam-dirty 101\" is not a cause with a"
            + " factor; write",
        "two,,,,beam-dirty -2  | cell F2: \"beam-dirty -2\" is not a cause with a factor; write",
        "two,,,,\"beam-dirty 2, beam-dirty 3\" | cell F2: \"beam-dirty\" is here twice",
        "two,,,,               | cell F2: \"\" is not a cause with a factor",
        "two,,heavy-rian,,beam-dirty 2 | cell D2: \"heavy-rian\" is not a history",
        "two,,,heavy-rian,beam-dirty 2 | cell E2: \"heavy-rian\" is not a history",
        ",,,,beam-dirty 2      | cell A2: this row has no condition",
      })
  void a_wrong_cell_is_told_with_its_place(String cells, String message) {
    assertThat(problems("r," + cells + ",it is so,common practice\n"))
        .singleElement()
        .asString()
        .startsWith(message);
  }

  @Test
  void a_cell_that_is_no_text_for_people_is_refused() {
    String hostile = "\"x\"\"), because(drools))); System.exit(1); //\"";
    String[] cells = "r,two,0 % to 1 %,heavy-rain,cold-snap,beam-dirty 2,so,so".split(",");
    for (int column = 0; column < cells.length; column++) {
      String[] changed = cells.clone();
      changed[column] = hostile;
      String rows = String.join(",", changed) + "\n";
      assertThat(problems(rows)).as(rows).isNotEmpty();
      assertThatThrownBy(() -> DecisionTables.rows(with(rows)))
          .isInstanceOf(KnowledgeException.class);
    }
  }

  @Test
  void a_cause_that_an_add_on_switched_off_is_no_slip() {
    TreeMap<String, yett.knowledge.Cause> causes = new TreeMap<>(Rules.BASE.causes());
    causes.remove("beam-dirty");
    AddOn off =
        new AddOn("quay", "Quay", "quay/", List.of(), List.of(), List.of("cause beam-dirty"));
    RuleBase base =
        with(row("two", null, null, null), off)
            .withCards(causes, Rules.BASE.checks(), Rules.BASE.histories(), Rules.BASE.repairs());
    assertThat(DecisionTables.problems(base)).isEmpty();
  }
}
