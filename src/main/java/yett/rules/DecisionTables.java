package yett.rules;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import yett.knowledge.KnowledgeException;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * Decision tables of a rule base as rules. A table is data and needs nobody's trust; see
 * docs/decisions.
 */
public final class DecisionTables {
  /** The kind of problem when two rows give two ranges for one reading at one gate. */
  public static final String CLASH = "table-clash";

  /** Before the rules of every table; part of the key under which compiled rules are kept. */
  static final String HEAD =
      """
      package yett.rules.tables

      import yett.rules.Fact.Site
      import yett.rules.Conclusion.Expectation
      import static yett.rules.Reason.because

      """;

  private DecisionTables() {}

  /** Everything that is wrong with the tables, with the place of the cell. */
  public static List<Problem> problems(RuleBase base) {
    List<Problem> problems = new ArrayList<>();
    rules(base, problems);
    return problems;
  }

  /**
   * The rules (DRL) of all tables, by the name of a file.
   *
   * @throws KnowledgeException if anything is wrong with one
   */
  static SortedMap<String, String> rules(RuleBase base) {
    List<Problem> problems = new ArrayList<>();
    SortedMap<String, String> rules = rules(base, problems);
    if (!problems.isEmpty()) {
      throw new KnowledgeException(problems);
    }
    return rules;
  }

  private static SortedMap<String, String> rules(RuleBase base, List<Problem> problems) {
    SortedMap<String, String> all = new TreeMap<>();
    TreeSet<String> names = new TreeSet<>();
    List<TableRow> rows = new ArrayList<>();
    for (Map.Entry<String, String> table : base.tables().entrySet()) {
      String file = table.getKey();
      StringBuilder rules = new StringBuilder();
      for (TableSheet sheet : sheets(file, table.getValue(), problems)) {
        ReadingsTable readings = new ReadingsTable(file, sheet, base, names, problems);
        rules.append(readings.rules());
        rows.addAll(readings.soundRows());
      }
      all.put("table-" + all.size() + ".drl", HEAD + rules);
    }
    clashes(base, rows, problems);
    return all;
  }

  /** Of two rows that clash, the one of an add-on is told, which somebody is working on. */
  private static void clashes(RuleBase base, List<TableRow> all, List<Problem> problems) {
    List<TableRow> rows =
        all.stream()
            .filter(row -> !isOff(base, row))
            .sorted(Comparator.comparing(row -> isOfAddOn(base, row)))
            .toList();
    for (int later = 1; later < rows.size(); later++) {
      TableRow row = rows.get(later);
      rows.subList(0, later).stream()
          .map(row::clash)
          .flatMap(Optional::stream)
          .findFirst()
          .ifPresent(problems::add);
    }
  }

  private static boolean isOff(RuleBase base, TableRow row) {
    return base.addOns().stream().anyMatch(a -> a.switchesOff().contains("rule " + row.rule()));
  }

  private static boolean isOfAddOn(RuleBase base, TableRow row) {
    return base.addOns().stream().anyMatch(a -> row.file().startsWith(a.folder()));
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
      problems.add(problem(file, "this is no workbook that can be read", "Save it as XLSX again."));
    }
    return List.of();
  }

  private static Problem problem(String file, String message, String advice) {
    return new Problem("no-table", file, 0, 0, message, advice);
  }
}
