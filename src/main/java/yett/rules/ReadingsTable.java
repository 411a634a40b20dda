package yett.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/**
 * A table of usual readings by what is installed, one rule a row. A row becomes a rule of one fixed
 * form; every value that goes into it is looked up, parsed or made of plain characters first, so
 * that no cell can be more than a value.
 */
final class ReadingsTable {
  private static final String IF = "if ";
  private static final List<String> COLUMNS =
      List.of("rule", "check", "low", "high", "how", "because", "source");

  /** No quotation mark, backslash, brace or line end: nothing that could leave a text in quotes. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "[\\p{L}\\p{N} .,;:()%°²³½¼×+=<>'&-]+(/[\\p{L}\\p{N} ][\\p{L}\\p{N}"
              + " .,;:()%°²³½¼×+=<>'&-]*)*");

  private static final int LONGEST = 240;

  private final String file;
  private final TableSheet sheet;
  private final RuleBase base;
  private final Set<String> names;
  private final List<Problem> problems;
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private final Map<SiteQuestion, Integer> conditions = new LinkedHashMap<>();
  private final List<TableRow> sound = new ArrayList<>();

  /**
   * @param names of the rules of all tables so far
   */
  ReadingsTable(
      String file, TableSheet sheet, RuleBase base, Set<String> names, List<Problem> problems) {
    this.file = file;
    this.sheet = sheet;
    this.base = base;
    this.names = names;
    this.problems = problems;
  }

  /** The rules (DRL) of all rows that have nothing wrong. */
  String rules() {
    List<Integer> rows = sheet.rows();
    heading(rows.get(0));
    StringBuilder rules = new StringBuilder();
    if (columns.keySet().containsAll(COLUMNS)) {
      rows.stream().skip(1).forEach(row -> rule(row).ifPresent(rules::append));
    }
    return rules.toString();
  }

  /** The rows that have nothing wrong, once the rules were made. */
  List<TableRow> soundRows() {
    return sound;
  }

  private void heading(int row) {
    for (int column : sheet.columns(row)) {
      String title = sheet.cell(row, column).orElse("");
      if (title.startsWith(IF)) {
        SiteQuestion question = base.siteQuestions().get(title.substring(IF.length()).strip());
        if (question == null) {
          String id = title.substring(IF.length()).strip();
          problem(
              row,
              column,
              "\"" + id + "\" is no site question",
              Names.advice(id, base.siteQuestions().keySet()));
        } else {
          conditions.put(question, column);
        }
      } else if (COLUMNS.contains(title)) {
        columns.put(title, column);
      } else {
        problem(
            row,
            column,
            "\"" + title + "\" is no column of such a table",
            Names.advice(title, COLUMNS) + " Or \"if\" and a site question.");
      }
    }
    COLUMNS.stream()
        .filter(c -> !columns.containsKey(c))
        .forEach(c -> problem(row, 0, "the column \"" + c + "\" is missing", "Add it."));
  }

  private Optional<String> rule(int row) {
    int before = problems.size();
    String name = plain(row, "rule");
    if (!names.add(name)) {
      problem(row, columns.get("rule"), "there are two rules \"" + name + "\"", "Rename one.");
    }
    String id = text(row, "check");
    Check check = base.checks().get(id);
    if (check == null || check.measures().isEmpty()) {
      problem(
          row,
          columns.get("check"),
          "\"" + id + "\" is no check that is measured",
          Names.advice(id, measured()));
      return Optional.empty();
    }
    String where = conditions(row);
    double low = reading(row, "low", check.measures().get());
    double high = reading(row, "high", check.measures().get());
    if (low > high) {
      problem(row, columns.get("high"), "the upper end is below the lower", "Exchange the two.");
    }
    String how = plain(row, "how");
    String because = plain(row, "because");
    String source = plain(row, "source") + from();
    if (problems.size() > before) {
      return Optional.empty();
    }
    sound.add(tableRow(name, row, check, low, high));
    return Optional.of(
        "rule \"%s\"\n  @Because(\"%s\")\n  @Source(\"%s\")\nwhen\n%sthen\n"
                .formatted(name, because, source, where)
            + "  insertLogical(new Expectation(\"%s\", %s, %s, \"%s\", because(drools)));\nend\n\n"
                .formatted(id, low, high, how));
  }

  private TableRow tableRow(String name, int row, Check check, double low, double high) {
    Map<SiteQuestion, TableConditions.Gates> gates = new LinkedHashMap<>();
    conditions.forEach(
        (question, column) ->
            sheet
                .cell(row, column)
                .ifPresent(cell -> gates.put(question, TableConditions.gates(question, cell))));
    String place = sheet.place(row, columns.get("check"));
    return new TableRow(name, file, lineOf(row), place, check, gates, low, high);
  }

  /** Which add-on the table comes from, as the source of its rules tells. */
  private String from() {
    return base.addOns().stream()
        .filter(a -> file.startsWith(a.folder()))
        .map(a -> "; add-on " + a.name().replaceAll("[^\\p{L}\\p{N} ]", ""))
        .findFirst()
        .orElse("");
  }

  private List<String> measured() {
    return base.checks().values().stream().filter(Check::measured).map(Check::id).toList();
  }

  private String conditions(int row) {
    StringBuilder where = new StringBuilder();
    conditions.forEach(
        (question, column) ->
            sheet
                .cell(row, column)
                .ifPresent(
                    cell -> {
                      try {
                        where.append(TableConditions.of(question, cell));
                      } catch (RuntimeException e) {
                        problem(row, column, e.getMessage(), "");
                      }
                    }));
    if (conditions.values().stream().allMatch(c -> sheet.cell(row, c).isEmpty())) {
      problem(
          row,
          0,
          "this row has no condition",
          "Write \"any\" below a site question that is asked at every gate.");
    }
    return where.toString();
  }

  private double reading(int row, String column, Measures measures) {
    try {
      return TableConditions.reading(measures, text(row, column));
    } catch (RuntimeException e) {
      problem(row, columns.get(column), e.getMessage(), "");
      return 0;
    }
  }

  private String text(int row, String column) {
    return sheet.cell(row, columns.get(column)).orElse("");
  }

  private String plain(int row, String column) {
    String text = text(row, column);
    if (text.isEmpty() || text.length() > LONGEST || !PLAIN.matcher(text).matches()) {
      problem(
          row,
          columns.get(column),
          text.isEmpty() ? "\"" + column + "\" is empty" : "this text cannot stand here",
          "Letters, figures and ordinary marks, without quotation marks or backslashes, "
              + LONGEST
              + " at most.");
      return "";
    }
    return text;
  }

  private void problem(int row, int column, String message, String advice) {
    problems.add(
        new Problem(
            "wrong-cell",
            file,
            lineOf(row),
            Math.min(1, lineOf(row)),
            sheet.place(row, column) + ": " + message,
            advice));
  }

  /** A workbook has no lines. */
  private int lineOf(int row) {
    return file.endsWith(".xlsx") ? 0 : row + 1;
  }
}
