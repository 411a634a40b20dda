package yett.rules;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.knowledge.AddOn;
import yett.knowledge.Names;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/**
 * Reads the rows of one sheet: the conclusion according to its kind, the conditions, and the
 * reason.
 */
final class TableReader {
  /** Column of histories: "or" between those of which one is enough, otherwise "and". */
  static final String HAPPENED = "happened";

  /** Column of histories with "or" between them; none of them may have happened. */
  static final String NOT_HAPPENED = "not happened";

  private static final String IF = "if ";
  private static final String RULE = "rule";

  private final String file;
  private final TableSheet sheet;
  private final RuleBase base;
  private final Map<String, String> names;
  private final List<Problem> problems;
  private final RowKind kind;
  private final List<String> needed;
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private final Map<SiteQuestion, String> conditions = new LinkedHashMap<>();

  /**
   * Prepares to read a sheet.
   *
   * @param names of the rules of all tables so far, each with its file
   */
  TableReader(
      String file,
      TableSheet sheet,
      RuleBase base,
      Map<String, String> names,
      List<Problem> problems) {
    this.file = file;
    this.sheet = sheet;
    this.base = base;
    this.names = names;
    this.problems = problems;
    this.kind = kind(sheet);
    this.needed =
        Stream.of(List.of(RULE), kind.columns(), List.of("because", "source"))
            .flatMap(List::stream)
            .toList();
  }

  /** The kind whose columns match best; the first of several. */
  private static RowKind kind(TableSheet sheet) {
    int row = sheet.rows().get(0);
    List<String> titles =
        sheet.columns(row).stream().map(c -> sheet.cell(row, c).orElse("")).toList();
    return RowKind.ALL.stream()
        .sorted(Comparator.comparing(k -> -k.columns().stream().filter(titles::contains).count()))
        .findFirst()
        .orElseThrow();
  }

  /** The rows without problems. */
  List<TableRow> rows() {
    List<Integer> rows = sheet.rows();
    heading(rows.get(0));
    return columns.keySet().containsAll(needed)
        ? rows.stream().skip(1).map(this::row).flatMap(Optional::stream).toList()
        : List.of();
  }

  private void heading(int row) {
    for (int column : sheet.columns(row)) {
      String title = sheet.cell(row, column).orElse("");
      columns.put(title, column);
      if (title.startsWith(IF)) {
        condition(title, cells(row));
      } else if (!needed.contains(title) && !kind.possible().contains(title)) {
        cells(row)
            .problem(
                title,
                "\"" + title + "\" is not a column of such a table",
                Names.advice(title, needed) + " Or \"if\" and a site question.");
      }
    }
    needed.stream()
        .filter(c -> !columns.containsKey(c))
        .forEach(c -> cells(row).problem(c, "the column \"" + c + "\" is missing", "Add it."));
  }

  private void condition(String title, RowCells heading) {
    String id = title.substring(IF.length()).strip();
    SiteQuestion question = base.siteQuestions().get(id);
    if (question == null) {
      heading.problem(
          title,
          "\"" + id + "\" is not a site question",
          Names.advice(id, base.siteQuestions().keySet()));
    } else {
      conditions.put(question, title);
    }
  }

  private RowCells cells(int row) {
    return new RowCells(file, sheet, row, columns, base, problems);
  }

  private Optional<TableRow> row(int row) {
    int before = problems.size();
    RowCells cells = cells(row);
    String name = cells.plain(RULE);
    if (isOff(name)) {
      return Optional.empty();
    }
    String other = names.putIfAbsent(name, file);
    if (other != null) {
      cells.problem(
          RULE, "there are two rules \"" + name + "\"" + where(other), rename(name, other));
    }
    Map<SiteQuestion, Accepted> gates = gates(cells);
    Map<String, Accepted> site = new LinkedHashMap<>();
    gates.forEach((question, accepted) -> site.put(question.id(), accepted));
    Grounds grounds = new Grounds(site, happened(cells), notHappened(cells));
    if (kind.needsGrounds() && grounds.conditions().isEmpty() && problems.size() == before) {
      cells.problem(
          RULE,
          "this row has no condition",
          "Write \"any\" below a site question that is asked at every gate.");
    }
    Reason reason =
        new Reason(
            name,
            cells.plain("because"),
            cells.plain("source") + from(),
            site.keySet().stream().sorted().toList());
    Optional<Row> made = kind.row(cells, grounds, reason);
    String place = cells.place(kind.columns().get(0));
    return problems.size() > before
        ? Optional.empty()
        : made.map(m -> new TableRow(m, file, cells.line(), place, gates));
  }

  /** Whether an add-on other than that of this table has switched off the rule. */
  private boolean isOff(String rule) {
    return base.addOns().stream()
        .filter(a -> !file.startsWith(a.folder()))
        .anyMatch(a -> a.switchesOff().contains("rule " + rule));
  }

  private String where(String other) {
    return other.equals(file) ? "" : ", the other is in " + other;
  }

  private String rename(String rule, String other) {
    boolean added = base.addOns().stream().anyMatch(a -> file.startsWith(a.folder()));
    return added && !other.equals(file)
        ? "To put yours in its place, switch the other off in "
            + AddOn.FILE
            + ": switches-off: {rule: [\""
            + rule
            + "\"]}. Otherwise rename yours."
        : "Rename one.";
  }

  /** The add-on that the table comes from, as text for the source of its rules. */
  private String from() {
    return base.addOns().stream()
        .filter(a -> file.startsWith(a.folder()))
        .map(a -> "; add-on " + a.name())
        .findFirst()
        .orElse("");
  }

  private Map<SiteQuestion, Accepted> gates(RowCells cells) {
    Map<SiteQuestion, Accepted> gates = new LinkedHashMap<>();
    conditions.forEach(
        (question, title) -> {
          if (!cells.text(title).isEmpty()) {
            cells
                .parsed(title, cell -> TableConditions.accepted(question, cell))
                .ifPresent(accepted -> gates.put(question, accepted));
          }
        });
    return gates;
  }

  private List<Set<String>> happened(RowCells cells) {
    return cells.text(HAPPENED).isEmpty()
        ? List.of()
        : Stream.of(cells.text(HAPPENED).split("\\s+and\\s+"))
            .map(some -> histories(cells, HAPPENED, some))
            .toList();
  }

  private Set<String> notHappened(RowCells cells) {
    return cells.text(NOT_HAPPENED).isEmpty()
        ? Set.of()
        : histories(cells, NOT_HAPPENED, cells.text(NOT_HAPPENED));
  }

  private Set<String> histories(RowCells cells, String title, String text) {
    Set<String> histories = new LinkedHashSet<>();
    TableConditions.alternatives(text).forEach(histories::add);
    Set<String> known = base.histories().keySet();
    histories.stream()
        .filter(id -> !known.contains(id) && !base.switchedOff(id))
        .forEach(
            id -> cells.problem(title, "\"" + id + "\" is not a history", Names.advice(id, known)));
    return histories;
  }
}
