package yett.rules;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.knowledge.KnowledgeException;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * Reads the decision tables of a rule base into rows, which are facts for the rules. A table is
 * data, not a program, so it needs nobody's trust; see docs/decisions.
 */
public final class DecisionTables {
  /** The kind of problem when two rows give different ranges for one reading at one gate. */
  public static final String CLASH = "table-clash";

  /** Most rows of all tables together; each row is compared with every other. */
  private static final int MOST_ROWS = 3_000;

  private DecisionTables() {}

  /** Every problem of the tables, with the position of the cell. */
  public static List<Problem> problems(RuleBase base) {
    List<Problem> problems = new ArrayList<>();
    rows(base, problems);
    return problems;
  }

  /** The rows without problems, even if others have some. */
  public static List<Row> readable(RuleBase base) {
    return rows(base, new ArrayList<>()).stream().map(TableRow::row).toList();
  }

  /** The rows of one file without problems. */
  public static List<Row> rowsOf(RuleBase base, String file) {
    return rows(base, new ArrayList<>()).stream()
        .filter(row -> row.file().equals(file))
        .map(TableRow::row)
        .toList();
  }

  /**
   * The rows of all tables, without those that an add-on has switched off.
   *
   * @throws KnowledgeException if any table has a problem
   */
  static List<Row> rows(RuleBase base) {
    List<Problem> problems = new ArrayList<>();
    List<TableRow> rows = rows(base, problems);
    if (!problems.isEmpty()) {
      throw new KnowledgeException(problems);
    }
    return rows.stream().map(TableRow::row).toList();
  }

  private static List<TableRow> rows(RuleBase base, List<Problem> problems) {
    Map<String, String> names = new HashMap<>();
    List<TableRow> rows = new ArrayList<>();
    tables(base)
        .forEach(
            (file, content) -> {
              List<TableSheet> sheets =
                  rows.size() + problems.size() > MOST_ROWS
                      ? List.of()
                      : sheets(file, content, problems);
              for (TableSheet sheet : sheets) {
                rows.addAll(new TableReader(file, sheet, base, names, problems).rows());
              }
            });
    if (rows.size() > MOST_ROWS) {
      problems.add(
          problem(
              "(rule base)",
              "the tables are too large",
              "All tables together have " + MOST_ROWS + " rows at most."));
      return List.of();
    }
    clashes(base, rows, problems);
    return rows;
  }

  /**
   * Reports rows that clash. Of two, the one from an add-on is reported, because that is the one
   * somebody is working on.
   */
  private static void clashes(RuleBase base, List<TableRow> all, List<Problem> problems) {
    List<TableRow> rows =
        all.stream()
            .filter(TableRow::givesRange)
            .sorted(Comparator.comparing(row -> isOfAddOn(base, row)))
            .toList();
    for (int later = 1; later < rows.size(); later++) {
      TableRow row = rows.get(later);
      rows.subList(0, later).stream()
          .map(earlier -> row.clash(earlier, base.checks()))
          .flatMap(Optional::stream)
          .findFirst()
          .ifPresent(problems::add);
    }
  }

  /** The tables, those of add-ons last: of two rows of one name theirs is the one to rename. */
  private static Map<String, String> tables(RuleBase base) {
    Map<String, String> tables = new LinkedHashMap<>();
    base.tables().forEach((file, text) -> put(tables, file, text, !isOfAddOn(base, file)));
    base.tables().forEach((file, text) -> put(tables, file, text, isOfAddOn(base, file)));
    return tables;
  }

  private static void put(Map<String, String> tables, String file, String text, boolean now) {
    if (now) {
      tables.put(file, text);
    }
  }

  private static boolean isOfAddOn(RuleBase base, TableRow row) {
    return isOfAddOn(base, row.file());
  }

  private static boolean isOfAddOn(RuleBase base, String file) {
    return base.addOns().stream().anyMatch(a -> file.startsWith(a.folder()));
  }

  private static List<TableSheet> sheets(String file, String content, List<Problem> problems) {
    try {
      List<TableSheet> sheets =
          TableFile.read(file, content).stream().filter(s -> !s.isEmpty()).toList();
      boolean tooLarge = sheets.stream().anyMatch(TableSheet::tooLarge);
      if (!sheets.isEmpty() && !tooLarge) {
        return sheets;
      }
      String message = tooLarge ? "this table is too large" : "there is nothing in this table";
      problems.add(problem(file, message, "A table has 2000 rows and 60 columns at most."));
    } catch (IOException e) {
      problems.add(problem(file, "this workbook cannot be read", "Save it as XLSX again."));
    }
    return List.of();
  }

  private static Problem problem(String file, String message, String advice) {
    return new Problem("no-table", file, 0, 0, message, advice);
  }
}
