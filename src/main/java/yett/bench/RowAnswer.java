package yett.bench;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import yett.knowledge.Check;
import yett.knowledge.LikelihoodRow;
import yett.knowledge.LikelihoodWords;

/**
 * Reads a row of likelihoods as a person types it: {@code slack usually, very-slack sometimes}. An
 * outcome without a word means "usually".
 */
final class RowAnswer {
  private static final String USUALLY = "usually";

  private RowAnswer() {}

  /** What is wrong with an answer about these outcomes; empty if nothing is. */
  static Optional<String> complaint(String answer, Collection<String> outcomes) {
    return CardQuestions.chances(answer, "outcome", outcomes).or(() -> sum(answer, outcomes));
  }

  private static Optional<String> sum(String answer, Collection<String> outcomes) {
    Map<String, String> parts = parts(answer);
    double sum = parts.values().stream().mapToDouble(w -> chance(w).orElse(0.0)).sum();
    boolean figures = inFigures(parts);
    double most = figures ? 1 + LikelihoodRow.TOLERANCE : LikelihoodRow.MOST_IN_WORDS;
    double least = figures ? 1 - LikelihoodRow.TOLERANCE : 1 / LikelihoodRow.MOST_IN_WORDS;
    boolean whole = parts.keySet().containsAll(outcomes);
    return sum > most || whole && sum < least
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "These come to %.2f in all; together they should come to %s1.",
                sum,
                figures ? "" : "about "))
        : Optional.empty();
  }

  static boolean inFigures(Map<String, String> parts) {
    return !parts.isEmpty()
        && LikelihoodWords.all().keySet().stream().noneMatch(parts.values()::contains);
  }

  /** The chances of the outcomes of a check, as a card with this answer will be read. */
  static double[] row(String answer, Check check) {
    return row(answer, Lists.ids(Vocabulary.outcomes(check)), check.otherwise());
  }

  /**
   * The chances of the outcomes in their order, as a card with this answer will be read.
   *
   * @param sound the row of a sound gate; outcomes that are not named share the rest in its
   *     proportions
   */
  static double[] row(String answer, List<String> outcomes, double[] sound) {
    Map<String, String> parts = parts(answer);
    double sum = parts.values().stream().mapToDouble(w -> chance(w).orElse(0.0)).sum();
    List<Integer> left =
        IntStream.range(0, sound.length)
            .filter(o -> !parts.containsKey(outcomes.get(o)))
            .boxed()
            .toList();
    double scale = !left.isEmpty() && sum <= 1 ? 1 : sum;
    double[] row = new double[sound.length];
    Arrays.setAll(row, o -> chance(parts.getOrDefault(outcomes.get(o), "")).orElse(0.0) / scale);
    LikelihoodRow.share(row, left, Math.max(0, 1 - sum), sound);
    return row;
  }

  static String wrongWord(String word) {
    return "\""
        + word
        + "\" is not a probability. Write a figure from 0 to 1, or one of: "
        + String.join(", ", LikelihoodWords.all().keySet())
        + ".";
  }

  static Optional<Double> chance(String word) {
    Double known = LikelihoodWords.all().get(word);
    if (known != null) {
      return Optional.of(known);
    }
    try {
      double figure = Double.parseDouble(word);
      return figure >= 0 && figure <= 1 ? Optional.of(figure) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** Name to word or figure. */
  static Map<String, String> parts(String answer) {
    return parts(answer, USUALLY);
  }

  /**
   * @param alone the word for a name without one
   */
  static Map<String, String> parts(String answer, String alone) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (String part : Lists.parts(answer, ",")) {
      String[] words = part.split("[\\s:]+", 2);
      parts.put(words[0], words.length > 1 ? words[1].strip() : alone);
    }
    return parts;
  }

  /** The most likely outcome of the answer. */
  static String likeliest(String answer) {
    return parts(answer).entrySet().stream()
        .max(Comparator.comparingDouble(RowAnswer::chance))
        .map(Map.Entry::getKey)
        .orElse("");
  }

  /** The outcomes that are more likely than not; if there are none, the most likely. */
  static List<String> likely(String answer) {
    List<String> likely =
        parts(answer).entrySet().stream()
            .filter(p -> chance(p) >= 0.5)
            .map(Map.Entry::getKey)
            .toList();
    return likely.isEmpty() && !parts(answer).isEmpty() ? List.of(likeliest(answer)) : likely;
  }

  private static double chance(Map.Entry<String, String> part) {
    return chance(part.getValue()).orElse(0.0);
  }
}
