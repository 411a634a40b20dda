package yett.rules;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.SiteQuestion;
import yett.rules.Accepted.Span;

/** Parses the condition on an answer in a cell. */
final class TableConditions {
  private static final String ANY = "any";
  private static final String NOT = "not ";
  private static final double LEAST = Double.NEGATIVE_INFINITY;
  private static final double MOST = Double.POSITIVE_INFINITY;

  private TableConditions() {}

  /**
   * Answers to a site question.
   *
   * @throws IllegalArgumentException with the problem, and what can be written
   */
  static Accepted accepted(SiteQuestion question, String cell) {
    String choice = "choice of \"" + question.id() + "\"";
    return accepted(question.measures(), question.choices().keySet(), choice, cell);
  }

  /**
   * Answers to a check.
   *
   * @throws IllegalArgumentException with the problem, and what can be written
   */
  static Accepted accepted(Check check, String cell) {
    List<String> outcomes = check.outcomes().stream().map(Check.Outcome::id).toList();
    return accepted(check.measures(), outcomes, "outcome of \"" + check.id() + "\"", cell);
  }

  /**
   * @param words that are possible answers, if it is not measured
   * @param asked what a word must be, for the message
   */
  private static Accepted accepted(
      Optional<Measures> measures, Collection<String> words, String asked, String cell) {
    if (measures.isPresent()) {
      return new Accepted(
          Set.of(), alternatives(cell).map(range -> span(measures.get(), range)).toList());
    }
    Set<String> accepted = new LinkedHashSet<>(words);
    if (cell.startsWith(NOT)) {
      accepted.removeAll(words(words, asked, cell.substring(NOT.length())));
    } else if (!cell.equals(ANY)) {
      accepted.retainAll(words(words, asked, cell));
    }
    return new Accepted(accepted, List.of());
  }

  /** The parts of a cell between "or". */
  static Stream<String> alternatives(String cell) {
    return Arrays.stream(cell.split("\\s+or\\s+")).map(String::strip);
  }

  private static List<String> words(Collection<String> known, String asked, String cell) {
    List<String> words = alternatives(cell).toList();
    for (String word : words) {
      if (!known.contains(word)) {
        throw new IllegalArgumentException(
            "\""
                + word
                + "\" is not "
                + Names.article(asked)
                + asked
                + ". "
                + Names.advice(word, known));
      }
    }
    return words;
  }

  private static Span span(Measures measures, String cell) {
    if (cell.equals(ANY)) {
      return new Span(LEAST, MOST);
    }
    if (cell.startsWith("below ")) {
      return new Span(LEAST, reading(measures, cell.substring(6)));
    }
    if (cell.startsWith("up to ")) {
      return new Span(LEAST, Math.nextUp(reading(measures, cell.substring(6))));
    }
    if (cell.startsWith("from ")) {
      return new Span(reading(measures, cell.substring(5)), MOST);
    }
    if (cell.startsWith("above ")) {
      return new Span(Math.nextUp(reading(measures, cell.substring(6))), MOST);
    }
    String[] ends = cell.split("\\s+to\\s+");
    if (ends.length != 2) {
      throw new IllegalArgumentException(
          "\"" + cell + "\" is not a range; write \"below 6 m\", \"6 m to 9 m\" or \"above 9 m\"");
    }
    return new Span(reading(measures, ends[0]), reading(measures, ends[1]));
  }

  /** A reading with its unit, in the canonical unit. */
  static double reading(Measures measures, String text) {
    boolean bare = text.strip().matches("[-+]?[0-9.,]+");
    if (bare && measures.counted().isEmpty() && !measures.unit().symbol().isEmpty()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" has no unit; write " + text.strip() + " " + measures.unit().symbol());
    }
    return measures.parse(text);
  }
}
