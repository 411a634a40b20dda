package yett.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.LikelihoodWords;
import yett.knowledge.Names;

/**
 * A row of likelihoods as a person answers it: {@code slack usually, very-slack sometimes}. An
 * outcome alone is meant as "usually".
 */
final class RowAnswer {
  private static final String USUALLY = "usually";

  private RowAnswer() {}

  /** What is wrong with an answer, if anything is. */
  static Optional<String> complaint(String answer, Check check) {
    List<String> outcomes = check.outcomes().stream().map(Check.Outcome::id).toList();
    for (Map.Entry<String, String> part : parts(answer).entrySet()) {
      if (!outcomes.contains(part.getKey())) {
        return Optional.of(
            "\""
                + part.getKey()
                + "\" is not an outcome of \""
                + check.id()
                + "\". "
                + Names.advice(part.getKey(), outcomes));
      }
      if (chance(part.getValue()).isEmpty()) {
        return Optional.of(wrongWord(part.getValue()));
      }
    }
    double sum = parts(answer).values().stream().mapToDouble(w -> chance(w).orElse(0.0)).sum();
    return sum > 4.0 / 3
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "These come to %.2f in all; together they should come to about 1.",
                sum))
        : Optional.empty();
  }

  static String wrongWord(String word) {
    return "\""
        + word
        + "\" is no chance. Write a figure from 0 to 1, or one of: "
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
    Map<String, String> parts = new LinkedHashMap<>();
    for (String part : Lists.parts(answer, ",")) {
      String[] words = part.split("[\\s:]+", 2);
      parts.put(words[0], words.length > 1 ? words[1].strip() : USUALLY);
    }
    return parts;
  }

  /** As a card has it: {@code {slack: usually}}. */
  static String yaml(String answer) {
    List<String> parts = new ArrayList<>();
    parts(answer).forEach((name, word) -> parts.add(name + ": " + word));
    return "{" + String.join(", ", parts) + "}";
  }

  /** The likeliest of what was answered. */
  static String likeliest(String answer) {
    return parts(answer).entrySet().stream()
        .max(
            (a, b) ->
                Double.compare(chance(a.getValue()).orElse(0.0), chance(b.getValue()).orElse(0.0)))
        .map(Map.Entry::getKey)
        .orElse("");
  }
}
