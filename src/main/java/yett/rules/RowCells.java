package yett.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import yett.knowledge.Check;
import yett.knowledge.Names;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * The cells of a row by the titles of their columns. Every cell is looked up, parsed or restricted
 * to plain characters, so that a problem is reported with its position.
 *
 * @param columns by title
 * @param problems receives every problem
 */
record RowCells(
    String file,
    TableSheet sheet,
    int row,
    Map<String, Integer> columns,
    RuleBase base,
    List<Problem> problems) {

  /** Plain words, without characters that belong in a program or a web page. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "[\\p{L}\\p{N} .,;:()%°²³½¼×+=<>'&-]+(/[\\p{L}\\p{N} ][\\p{L}\\p{N}"
              + " .,;:()%°²³½¼×+=<>'&-]*)*");

  private static final int LONGEST = 240;

  /** The text of a cell; empty if the cell is empty or there is no such column. */
  String text(String title) {
    return Optional.ofNullable(columns.get(title)).flatMap(c -> sheet.cell(row, c)).orElse("");
  }

  String plain(String title) {
    String text = text(title);
    if (text.isEmpty() || text.length() > LONGEST || !PLAIN.matcher(text).matches()) {
      problem(
          title,
          text.isEmpty() ? "\"" + title + "\" is empty" : "this text cannot be used here",
          "Letters, figures and ordinary marks, without quotation marks or backslashes, "
              + LONGEST
              + " at most.");
      return "";
    }
    return text;
  }

  /**
   * The parsed value of a cell.
   *
   * @param parser throws an IllegalArgumentException whose message is the problem
   */
  <T> Optional<T> parsed(String title, Function<String, T> parser) {
    try {
      return Optional.of(parser.apply(text(title)));
    } catch (RuntimeException e) {
      problem(title, e.getMessage(), "");
      return Optional.empty();
    }
  }

  /** The check with this id; empty without a problem if an add-on has switched it off. */
  Optional<Check> check(String title, String id, boolean measured) {
    Optional<Check> check =
        Optional.ofNullable(base.checks().get(id)).filter(c -> !measured || c.measured());
    if (check.isEmpty() && !base.switchedOff(id)) {
      List<String> known =
          base.checks().values().stream()
              .filter(c -> !measured || c.measured())
              .map(Check::id)
              .toList();
      problem(
          title,
          "\"" + id + "\" is not a check" + (measured ? " that is measured" : ""),
          Names.advice(id, known));
    }
    return check;
  }

  String place(String title) {
    return sheet.place(row, columns.getOrDefault(title, 0));
  }

  void problem(String title, String message, String advice) {
    problems.add(
        new Problem(
            "wrong-cell",
            file,
            line(),
            Math.min(1, line()),
            place(title) + ": " + message,
            advice));
  }

  /** The line of the row; 0 in a workbook, which has no lines. */
  int line() {
    return file.endsWith(".xlsx") ? 0 : row + 1;
  }
}
