package yett.rules;

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
import yett.rules.UsualRange.Gates;

/**
 * A table of usual readings by what is installed. Every cell is looked up, parsed or made of plain
 * characters, so that what is wrong is told where it stands.
 */
final class ReadingsTable {
  private static final String IF = "if ";
  private static final List<String> COLUMNS =
      List.of("rule", "check", "low", "high", "how", "because", "source");

  /** What is written in words, without marks that belong into a program or a page. */
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

  /** The rows that have nothing wrong. */
  List<TableRow> rows() {
    List<Integer> rows = sheet.rows();
    heading(rows.get(0));
    return columns.keySet().containsAll(COLUMNS)
        ? rows.stream().skip(1).map(this::row).flatMap(Optional::stream).toList()
        : List.of();
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

  private Optional<TableRow> row(int row) {
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
    Map<SiteQuestion, Gates> gates = gates(row);
    double low = reading(row, "low", check.measures().get());
    double high = reading(row, "high", check.measures().get());
    if (low > high) {
      problem(row, columns.get("high"), "the upper end is below the lower", "Exchange the two.");
    }
    String how = plain(row, "how");
    Reason reason = new Reason(name, plain(row, "because"), plain(row, "source") + from());
    if (problems.size() > before) {
      return Optional.empty();
    }
    Map<String, Gates> where = new LinkedHashMap<>();
    gates.forEach((question, wanted) -> where.put(question.id(), wanted));
    UsualRange range = new UsualRange(id, low, high, how, reason, where);
    String place = sheet.place(row, columns.get("check"));
    return Optional.of(new TableRow(range, file, lineOf(row), place, check, gates));
  }

  /** Which add-on the table comes from, as the source of its rules tells. */
  private String from() {
    return base.addOns().stream()
        .filter(a -> file.startsWith(a.folder()))
        .map(a -> "; add-on " + a.name())
        .findFirst()
        .orElse("");
  }

  private List<String> measured() {
    return base.checks().values().stream().filter(Check::measured).map(Check::id).toList();
  }

  private Map<SiteQuestion, Gates> gates(int row) {
    Map<SiteQuestion, Gates> gates = new LinkedHashMap<>();
    conditions.forEach(
        (question, column) ->
            sheet
                .cell(row, column)
                .ifPresent(
                    cell -> {
                      try {
                        gates.put(question, TableConditions.gates(question, cell));
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
    return gates;
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
