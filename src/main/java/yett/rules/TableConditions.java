package yett.rules;

import java.util.Arrays;
import java.util.List;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.SiteQuestion;

/** What a cell says of the site, as a condition of a rule. */
final class TableConditions {
  private TableConditions() {}

  /**
   * @throws IllegalArgumentException with what is wrong, and what can be written
   */
  static String of(SiteQuestion question, String cell) {
    String where = cell.equals("any") ? "" : ", " + condition(question, cell);
    return "  Site(question == \"" + question.id() + "\"" + where + ")\n";
  }

  private static String condition(SiteQuestion question, String cell) {
    return question.measures().isPresent()
        ? measured(question.measures().get(), cell)
        : chosen(question, cell);
  }

  private static String chosen(SiteQuestion question, String cell) {
    boolean not = cell.startsWith("not ");
    List<String> choices =
        Arrays.stream((not ? cell.substring(4) : cell).split("\\s+or\\s+"))
            .map(String::strip)
            .toList();
    for (String choice : choices) {
      if (!question.choices().containsKey(choice)) {
        throw new IllegalArgumentException(
            "\""
                + choice
                + "\" is no choice of \""
                + question.id()
                + "\". "
                + Names.advice(choice, question.choices().keySet()));
      }
    }
    return "choice " + (not ? "not in" : "in") + " (\"" + String.join("\", \"", choices) + "\")";
  }

  private static String measured(Measures measures, String cell) {
    if (cell.startsWith("below ")) {
      return "value < " + reading(measures, cell.substring(6));
    }
    if (cell.startsWith("above ")) {
      return "value > " + reading(measures, cell.substring(6));
    }
    String[] ends = cell.split("\\s+to\\s+");
    if (ends.length != 2) {
      throw new IllegalArgumentException(
          "\"" + cell + "\" is no range; write \"below 6 m\", \"6 m to 9 m\" or \"above 9 m\"");
    }
    return "value >= " + reading(measures, ends[0]) + ", value < " + reading(measures, ends[1]);
  }

  /** A reading with its unit, in the canonical unit. */
  static double reading(Measures measures, String text) {
    boolean bare = text.strip().matches("[-+]?[0-9.,]+");
    if (bare && measures.counted().isEmpty() && !measures.unit().symbol().isEmpty()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" says no unit; write " + text.strip() + " " + measures.unit().symbol());
    }
    return measures.parse(text);
  }
}
