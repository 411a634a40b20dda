package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static yett.rules.Rules.example;
import static yett.rules.Rules.site;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.knowledge.AddOn;
import yett.knowledge.KnowledgeException;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Expectation;
import yett.rules.Row.UsualRange;
import yett.rules.Rules.Example;
import yett.testing.Size;

class DecisionTablesTest extends ShownByExamples {
  private static final String HEADING =
      "rule,check,if usage-class,if opening,low,high,how,because,source\n";
  private static final String ROW =
      "r,busiest-hour,class-i,,0,10,up to ten,it is so,common practice\n";

  /** The shipped cards with one table and no other rules. */
  private static RuleBase with(String name, String content, AddOn... addOns) {
    return Rules.BASE.ruledBy(
        Collections.emptySortedMap(), new TreeMap<>(Map.of(name, content)), List.of(addOns));
  }

  private static List<String> problems(String name, String content) {
    return DecisionTables.problems(with(name, content)).stream().map(Problem::message).toList();
  }

  private static String workbook(String csv) {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      XSSFSheet sheet = workbook.createSheet("Ranges");
      int r = 0;
      for (String line : csv.split("\n")) {
        Row row = sheet.createRow(r++);
        String[] cells = line.split(",");
        for (int c = 0; c < cells.length; c++) {
          if (!cells[c].isEmpty()) {
            row.createCell(c).setCellValue(cells[c]);
          }
        }
      }
      workbook.write(bytes);
      return bytes.toString(StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @CsvSource({"class-i, 10", "class-ii, 20", "class-iii, 30", "class-iv, 30"})
  void the_shipped_table_gives_the_range_for_what_is_installed(String users, double runs) {
    Expectation range =
        Rules.judge(Rules.site("usage-class", users)).expectation("busiest-hour").orElseThrow();
    assertThat(range.low()).isZero();
    assertThat(range.high()).isEqualTo(runs);
    assertThat(range.reason().source()).startsWith("UL 325 usage classes");
  }

  @Test
  void the_shipped_tables_are_sound() {
    assertThat(Rules.BASE.tables()).isNotEmpty();
    assertThat(DecisionTables.problems(Rules.BASE)).isEmpty();
  }

  static Stream<Example> examples() {
    return Stream.of(
        example(
            "how often a gate for a few homes opens in its busiest hour",
            site("usage-class", "class-i")),
        example(
            "how often a gate for the public opens in its busiest hour",
            site("usage-class", "class-ii")),
        example(
            "how often a gate for industry opens in its busiest hour",
            site("usage-class", "class-iv")),
        example("what a solar gate may draw standing", site("supply", "solar")),
        example("what a gate on mains draws standing", site("supply", "mains")),
        example("what a receiver is fed with", site("supply", "mains")),
        example("what a beam is fed with", site("beams", "two")),
        example("what accessories are fed with", site("supply", "mains")));
  }

  @Test
  void a_solar_gate_draws_less_than_one_on_mains() {
    double mains = standing("mains");
    assertThat(mains).isEqualTo(0.35);
    assertThat(standing("solar")).isEqualTo(0.08);
    assertThat(
            Rules.judge(Rules.site("batteries", "none"), Rules.site("supply", "mains"))
                .expectation("standing-current"))
        .isEmpty();
  }

  private static double standing(String supply) {
    return Rules.judge(Rules.site("batteries", "agm"), Rules.site("supply", supply))
        .expectation("standing-current")
        .orElseThrow()
        .high();
  }

  @Test
  void a_workbook_says_the_same_as_the_text() {
    String csv =
        HEADING + ROW + "s,busiest-hour,not class-i,4 m to 6 m,1,20,so,it is so,from memory\n";
    List<yett.rules.Row> text = DecisionTables.rows(with("x.table.csv", csv));
    assertThat(DecisionTables.rows(with("x.table.xlsx", workbook(csv)))).isEqualTo(text);
    UsualRange second = (UsualRange) text.get(1);
    assertThat(second.expectation())
        .isEqualTo(
            new Expectation(
                "busiest-hour",
                1,
                20,
                "so",
                new Reason("s", "it is so", "from memory", List.of("opening", "usage-class"))));
    assertThat(second.conditions()).hasSize(2);
    assertThat(second.concerns(Fact.Site.chosen("usage-class", "class-ii"))).isTrue();
    assertThat(second.concerns(Fact.Site.chosen("usage-class", "class-i"))).isFalse();
    assertThat(second.concerns(Fact.Site.chosen("supply", "mains"))).isFalse();
    assertThat(second.concerns(Fact.Site.measured("opening", 4000))).isTrue();
    assertThat(second.concerns(Fact.Site.measured("opening", 3999))).isFalse();
    assertThat(second.concerns(Fact.Site.measured("opening", 6000))).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // users and opening of the gate; users and opening that the row speaks of; whether it
        // speaks
        "class-i  | 5 m | class-i             |             | true",
        "class-ii | 5 m | class-i             |             | false",
        "class-ii | 5 m | class-i or class-ii | below 6 m   | true",
        "class-ii | 6 m | class-i or class-ii | below 6 m   | false",
        "class-i  | 6 m | any                 | 6 m to 9 m  | true",
        "class-i  | 9 m | any                 | 6 m to 9 m  | false",
        "class-i  | 9 m |                     | above 9 m   | false",
        "class-i  | 9.1 m |                   | above 9 m   | true",
        "class-i  | 9 m | not class-i         | any         | false",
      })
  void a_row_speaks_where_all_its_conditions_hold(
      String users, String opening, String ifUsers, String ifOpening, boolean speaks) {
    String row =
        "r,busiest-hour,%s,%s,0,10,so,it is so,common practice\n"
            .formatted(Objects.toString(ifUsers, ""), Objects.toString(ifOpening, ""));
    RuleEngine engine =
        RuleEngine.of(
            with("x.table.csv", HEADING + row), new RuleCache(Path.of("target/rule-cache")));
    try (Judge judge = engine.newJudge()) {
      Set<Fact> gate = Set.of(Rules.site("usage-class", users), Rules.site("opening", opening));
      assertThat(judge.judge(gate).expectation("busiest-hour").isPresent()).isEqualTo(speaks);
      assertThat(judge.judge(Set.of()).conclusions()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bsiest-hour,class-i,,0,10     | cell B2: \"bsiest-hour\" is not a check that is measured",
        "busiest-hour,class-x,,0,10    | cell C2: \"class-x\" is not a choice of \"usage-class\"",
        "busiest-hour,class-i,6,0,10   | cell D2: \"6\" is not a range; write \"below 6 m\"",
        "busiest-hour,class-i,below 6,0,10 | cell D2: \"6\" has no unit; write 6 m",
        "busiest-hour,class-i,,ten,10  | cell E2: ",
        "busiest-hour,class-i,,20,10   | cell F2: the upper end is below the lower",
        "busiest-hour,,,0,10           | cell A2: this row has no condition",
        "receiver-supply,class-i,,20,29 V | cell E2: \"20\" has no unit; write 20 V",
      })
  void a_wrong_cell_is_told_with_its_place(String cells, String message) {
    String csv = HEADING + "r," + cells + ",so,it is so,common practice\n";
    assertThat(problems("x.table.csv", csv)).hasSize(1);
    assertThat(problems("x.table.csv", csv).get(0)).startsWith(message);
    assertThat(problems("x.table.xlsx", workbook(csv)).get(0))
        .startsWith("sheet \"Ranges\", " + message);
  }

  @Test
  void wrong_columns_and_rules_of_one_name_are_told() {
    assertThat(problems("x.table.csv", "rule,chek,low,high,how,because,source,if opning\n"))
        .containsExactly(
            "cell B1: \"chek\" is not a column of such a table",
            "cell H1: \"opning\" is not a site question",
            "cell A1: the column \"check\" is missing");
    assertThat(problems("x.table.csv", HEADING + ROW + ROW))
        .containsExactly("cell A3: there are two rules \"r\"");
    assertThat(problems("x.table.csv", "\n\n")).containsExactly("there is nothing in this table");
  }

  /** A row that an add-on changes keeps its name; the one below it is switched off. */
  @Test
  void of_two_rows_of_one_name_the_add_on_s_is_reported_until_the_other_is_switched_off() {
    String own = HEADING + ROW.replace("0,10", "0,12");
    TreeMap<String, String> tables =
        new TreeMap<>(Map.of("a/x.table.csv", own, "drive/x.table.csv", HEADING + ROW));
    AddOn addOn = new AddOn("a", "A", "a/", List.of(), List.of(), List.of());
    RuleBase both = Rules.BASE.ruledBy(Collections.emptySortedMap(), tables, List.of(addOn));
    assertThat(DecisionTables.problems(both))
        .anySatisfy(
            p -> {
              assertThat(p.file()).isEqualTo("a/x.table.csv");
              assertThat(p.message())
                  .isEqualTo(
                      "cell A2: there are two rules \"r\", the other is in drive/x.table.csv");
              assertThat(p.advice()).contains("switches-off: {rule: [\"r\"]}");
            })
        .noneMatch(p -> p.file().startsWith("drive/"));
    AddOn off = new AddOn("a", "A", "a/", List.of(), List.of(), List.of("rule r"));
    RuleBase one = Rules.BASE.ruledBy(Collections.emptySortedMap(), tables, List.of(off));
    assertThat(DecisionTables.problems(one)).isEmpty();
    assertThat(DecisionTables.readable(one)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // usage-class, opening, low, high of the second row; whether a gate can meet both
        "class-i,,0,12                          | true",
        "class-i,,0,10                          | false", // the same range
        "class-ii,,0,12                         | false",
        "class-i or class-ii,,0,12              | true",
        "not class-i,,0,12                      | false",
        "any,,0,12                              | true",
        ",below 6 m,0,12                        | true",
      })
  void two_ranges_for_one_reading_at_one_gate_are_a_clash(String cells, boolean clash) {
    String csv = HEADING + ROW + "s,busiest-hour," + cells + ",so,it is so,common practice\n";
    List<String> told =
        clash
            ? List.of(
                "cell B3: there are gates for which cell B2 gives another usual range for"
                    + " \"busiest-hour\"")
            : List.of();
    assertThat(problems("x.table.csv", csv)).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "below 6 m | 6 m to 9 m | false",
        "below 6 m | 5.99 m to 9 m | true",
        "6 m to 9 m | above 9 m | false",
        "6 m to 9 m | above 8 m | true",
        "any | below 6 m | true",
      })
  void ranges_of_the_site_meet_or_do_not(String one, String other, boolean clash) {
    String rows =
        ("r,busiest-hour,,%s,0,10,so,it is so,common practice\n"
                + "s,busiest-hour,,%s,0,12,so,it is so,common practice\n")
            .formatted(one, other);
    assertThat(problems("x.table.csv", HEADING + rows)).hasSize(clash ? 1 : 0);
  }

  @Test
  void a_table_as_long_as_may_be_is_looked_at() {
    int rows = Size.of(600, 1_998);
    StringBuilder csv = new StringBuilder(HEADING);
    for (int i = 1; i <= rows; i++) {
      csv.append(
          "r%d,busiest-hour,,%d mm to %d mm,0,%d,so,it is so,common practice\n"
              .formatted(i, i, i + 1, i));
    }
    assertThat(problems("x.table.csv", csv.toString())).isEmpty();
    String all = csv.toString().replaceAll("\\d+ mm to \\d+ mm", "any");
    assertThat(problems("x.table.csv", all)).hasSize(rows - 1);
  }

  @Test
  void of_a_clash_with_an_add_on_its_own_row_is_told_until_the_other_is_off() {
    SortedMap<String, String> tables = new TreeMap<>();
    tables.put("harrow/x.table.csv", HEADING + ROW);
    tables.put(
        "rules/y.table.csv", HEADING + ROW.replaceFirst("^r,", "s,").replace(",10,", ",12,"));
    AddOn quay = new AddOn("quay", "Quay", "harrow/", List.of(), List.of(), List.of());
    assertThat(clashes(tables, quay))
        .containsExactly(
            "harrow/x.table.csv: cell B2: there are gates for which rules/y.table.csv, cell B2"
                + " gives another usual range for \"busiest-hour\"");
    AddOn off = new AddOn("quay", "Quay", "harrow/", List.of(), List.of(), List.of("rule s"));
    assertThat(clashes(tables, off)).isEmpty();
  }

  private static List<String> clashes(SortedMap<String, String> tables, AddOn addOn) {
    RuleBase base = Rules.BASE.ruledBy(Collections.emptySortedMap(), tables, List.of(addOn));
    return DecisionTables.problems(base).stream().map(p -> p.file() + ": " + p.message()).toList();
  }

  @Test
  void a_question_that_is_asked_only_at_other_gates_keeps_two_rows_apart() {
    // The age of batteries is asked only where there are batteries.
    String rows =
        "rule,check,if batteries,if battery-age,low,high,how,because,source\n"
            + "r,busiest-hour,none,,0,10,so,it is so,common practice\n"
            + "s,busiest-hour,,below 2 years,0,12,so,it is so,common practice\n";
    assertThat(problems("x.table.csv", rows)).isEmpty();
    assertThat(problems("x.table.csv", rows.replace("none", "agm"))).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x\", because(drools))); System.exit(1); //",
        "x\\u0022, null)); System.exit(1); //",
        "x */ end rule",
        "x // y",
        "${1+1}",
        "@{System.exit(1)}",
        "x` + y",
        "x\u2028end",
      })
  void a_cell_that_is_no_text_for_people_is_refused(String text) {
    String quoted = "\"" + text.replace("\"", "\"\"") + "\"";
    for (int column : new int[] {0, 1, 2, 3, 4, 5, 6, 7, 8}) {
      String[] cells = ROW.strip().split(",");
      cells[column] = quoted;
      String csv = HEADING + String.join(",", cells) + "\n";
      assertThat(problems("x.table.csv", csv)).as(csv).isNotEmpty();
      assertThatThrownBy(() -> DecisionTables.rows(with("x.table.csv", csv)))
          .isInstanceOf(KnowledgeException.class);
    }
  }

  @Test
  void a_formula_is_read_as_what_it_shows_and_fetches_nothing() throws IOException {
    try (XSSFWorkbook workbook =
            new XSSFWorkbook(
                new ByteArrayInputStream(
                    workbook(HEADING + ROW).getBytes(StandardCharsets.ISO_8859_1)));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      workbook
          .getSheetAt(0)
          .getRow(1)
          .getCell(6)
          .setCellFormula("WEBSERVICE(\"http://127.0.0.1:9/\")");
      workbook.write(bytes);
      String content = bytes.toString(StandardCharsets.ISO_8859_1);
      assertThat(DecisionTables.rows(with("x.table.xlsx", content)))
          .isEqualTo(DecisionTables.rows(with("x.table.csv", HEADING + ROW)));
    }
  }

  @Test
  void a_table_of_an_add_on_says_where_it_comes_from() {
    AddOn quay = new AddOn("quay", "The \"quay\"", "quay/", List.of(), List.of(), List.of());
    UsualRange range =
        (UsualRange) DecisionTables.rows(with("quay/x.table.csv", HEADING + ROW, quay)).get(0);
    assertThat(range.reason().source()).isEqualTo("common practice; add-on The \"quay\"");
  }

  @Test
  void what_is_no_workbook_is_told() {
    for (String content : List.of("", "rule,check\n", "PK\u0003\u0004 and no more")) {
      assertThat(problems("x.table.xlsx", content)).containsExactly("this workbook cannot be read");
    }
  }

  @Test
  void a_bomb_does_not_go_off() throws IOException {
    char[] zeros = new char[60 << 20];
    Arrays.fill(zeros, ' ');
    String bomb =
        part(workbook(HEADING + ROW), "xl/worksheets/sheet1.xml", xml -> new String(zeros) + xml);
    assertThat(bomb.length()).isLessThan(200_000);
    assertThat(problems("x.table.xlsx", bomb)).containsExactly("this workbook cannot be read");
  }

  @Test
  void an_entity_is_not_resolved() throws IOException {
    String entity =
        part(
            workbook(HEADING + ROW),
            "xl/sharedStrings.xml",
            xml ->
                xml.replaceFirst(
                        "\\?>", "?><!DOCTYPE sst [<!ENTITY x SYSTEM \"file:///etc/hostname\">]>")
                    .replace("up to ten", "&x;"));
    assertThat(problems("x.table.xlsx", entity)).containsExactly("this workbook cannot be read");
  }

  /** The workbook with one of its parts changed. */
  private static String part(
      String workbook, String name, java.util.function.UnaryOperator<String> change)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream in =
            new ZipInputStream(
                new ByteArrayInputStream(workbook.getBytes(StandardCharsets.ISO_8859_1)));
        ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        String xml = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        out.putNextEntry(new ZipEntry(entry.getName()));
        String content = entry.getName().equals(name) ? change.apply(xml) : xml;
        out.write(content.getBytes(StandardCharsets.UTF_8));
      }
    }
    return bytes.toString(StandardCharsets.ISO_8859_1);
  }
}
