package yett.rules;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.SiteQuestion;

/** What a cell says of the site, as a condition of a rule. */
final class TableConditions {
  private static final String ANY = "any";
  private static final String NOT = "not ";

  private TableConditions() {}

  /**
   * @throws IllegalArgumentException with what is wrong, and what can be written
   */
  static String of(SiteQuestion question, String cell) {
    String where = cell.equals(ANY) ? "" : ", " + condition(question, cell);
    return "  Site(question == \"" + question.id() + "\"" + where + ")\n";
  }

  private static String condition(SiteQuestion question, String cell) {
    Gates gates = gates(question, cell);
    if (question.measures().isEmpty()) {
      boolean not = cell.startsWith(NOT);
      return "choice "
          + (not ? "not in" : "in")
          + " (\""
          + String.join("\", \"", choices(question, not ? cell.substring(NOT.length()) : cell))
          + "\")";
    }
    if (gates.below() == Double.POSITIVE_INFINITY) {
      return "value > " + gates.from();
    }
    String below = "value < " + gates.below();
    return gates.from() == Double.NEGATIVE_INFINITY
        ? below
        : "value >= " + gates.from() + ", " + below;
  }

  /**
   * The gates that a cell speaks of: those with one of the choices, or with a reading in a range.
   *
   * @param from in the canonical unit
   */
  record Gates(Set<String> choices, double from, double below) {
    /** Whether there is a gate of which both speak. */
    boolean meet(Gates other) {
      return choices.isEmpty() && other.choices().isEmpty()
          ? Math.max(from, other.from()) < Math.min(below, other.below())
          : !Collections.disjoint(choices, other.choices());
    }
  }

  /**
   * @throws IllegalArgumentException with what is wrong, and what can be written
   */
  static Gates gates(SiteQuestion question, String cell) {
    if (question.measures().isPresent()) {
      return cell.equals(ANY)
          ? range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
          : measured(question.measures().get(), cell);
    }
    Set<String> choices = new LinkedHashSet<>(question.choices().keySet());
    if (cell.startsWith(NOT)) {
      choices.removeAll(choices(question, cell.substring(NOT.length())));
    } else if (!cell.equals(ANY)) {
      choices.retainAll(choices(question, cell));
    }
    return new Gates(choices, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private static Gates range(double from, double below) {
    return new Gates(Set.of(), from, below);
  }

  private static List<String> choices(SiteQuestion question, String cell) {
    List<String> choices = Arrays.stream(cell.split("\\s+or\\s+")).map(String::strip).toList();
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
    return choices;
  }

  private static Gates measured(Measures measures, String cell) {
    if (cell.startsWith("below ")) {
      return range(Double.NEGATIVE_INFINITY, reading(measures, cell.substring(6)));
    }
    if (cell.startsWith("above ")) {
      return range(reading(measures, cell.substring(6)), Double.POSITIVE_INFINITY);
    }
    String[] ends = cell.split("\\s+to\\s+");
    if (ends.length != 2) {
      throw new IllegalArgumentException(
          "\"" + cell + "\" is no range; write \"below 6 m\", \"6 m to 9 m\" or \"above 9 m\"");
    }
    return range(reading(measures, ends[0]), reading(measures, ends[1]));
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
