package yett.bench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import yett.knowledge.Check;

/**
 * Writes a row of likelihoods in the form of a card: {@code {slack: usually, very-slack:
 * sometimes}}.
 */
final class RowText {
  private RowText() {}

  /**
   * The row of a check in the form of a card; for a complaint or proof the chance of its outcome.
   */
  static String of(String answer, Check check) {
    if (check.kind() == Check.Kind.CHECK) {
      return of(answer, Lists.ids(Vocabulary.outcomes(check)), check.otherwise());
    }
    String word = RowAnswer.parts(answer).get(check.outcomes().get(1).id());
    return word != null && RowAnswer.parts(answer).size() == 1
        ? word
        : String.format(Locale.ROOT, "%.3f", RowAnswer.row(answer, check)[1]);
  }

  /**
   * The form of a card: {@code {slack: usually}}. If it is in figures, outcomes that were left out
   * are included.
   */
  static String of(String answer, List<String> outcomes, double[] sound) {
    Map<String, String> parts = RowAnswer.parts(answer);
    if (RowAnswer.inFigures(parts)) {
      double[] row = RowAnswer.row(answer, outcomes, sound);
      for (int o = 0; o < row.length; o++) {
        parts.putIfAbsent(outcomes.get(o), String.format(Locale.ROOT, "%.3f", row[o]));
      }
    }
    return of(parts);
  }

  /** Names, each with its word or figure. */
  static String of(Map<String, String> parts) {
    return parts.entrySet().stream()
        .map(p -> p.getKey() + ": " + p.getValue())
        .collect(Collectors.joining(", ", "{", "}"));
  }
}
