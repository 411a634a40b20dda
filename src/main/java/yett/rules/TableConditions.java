package yett.rules;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.SiteQuestion;
import yett.rules.UsualRange.Gates;

/** What a cell says of the site, as a condition of a row. */
final class TableConditions {
  private static final String ANY = "any";
  private static final String NOT = "not ";

  private TableConditions() {}

  /** Whether there is a gate of which both speak. */
  static boolean meet(Gates one, Gates other) {
    return one.choices().isEmpty() && other.choices().isEmpty()
        ? Math.max(one.from(), other.from()) < Math.min(one.below(), other.below())
        : !Collections.disjoint(one.choices(), other.choices());
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
    return new Gates(choices, Double.NaN, Double.NaN);
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
      double above = Math.nextUp(reading(measures, cell.substring(6)));
      return range(above, Double.POSITIVE_INFINITY);
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
