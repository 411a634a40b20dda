package yett.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/**
 * Reads at which gates a new cause or check is possible: {@code batteries agm flooded, opening-side
 * left}.
 */
final class OnlyIf {
  static final String KEY = "only-if";

  private OnlyIf() {}

  static Question question(RuleBase base, String ask) {
    List<Candidate> choices =
        base.siteQuestions().values().stream()
            .filter(q -> q.measures().isEmpty())
            .map(
                q ->
                    new Candidate(
                        q.id(), q.name() + ": " + String.join(", ", q.choices().keySet())))
            .toList();
    return Question.of(
            KEY,
            ask + " QUESTION ANSWER, such as: batteries agm (nothing if at any)",
            answer -> complaint(answer, base))
        .naming(choices)
        .usual("");
  }

  private static Optional<String> complaint(String answer, RuleBase base) {
    for (Map.Entry<String, List<String>> part : parts(answer).entrySet()) {
      SiteQuestion question = base.siteQuestions().get(part.getKey());
      if (question == null) {
        return Lists.unknown(part.getKey(), "site question", base.siteQuestions().keySet());
      }
      if (question.measures().isPresent()) {
        return Optional.of(question.id() + " is measured; a card can depend on a choice only.");
      }
      if (part.getValue().isEmpty()) {
        return Optional.of("Write after it which answers: " + question.choices().keySet() + ".");
      }
      for (String choice : part.getValue()) {
        Optional<String> meant = meant(question, choice);
        if (meant.isPresent()) {
          return meant;
        }
        if (!question.choices().containsKey(choice)) {
          return Lists.unknown(
              choice, "answer to " + question.id() + " that is", question.choices().keySet());
        }
      }
    }
    return Optional.empty();
  }

  /** How a choice is written that was given in its words. */
  private static Optional<String> meant(SiteQuestion question, String words) {
    return question.choices().entrySet().stream()
        .filter(c -> !c.getKey().equals(words) && c.getValue().equalsIgnoreCase(words))
        .findFirst()
        .map(
            c ->
                "\""
                    + words
                    + "\" is written "
                    + c.getKey()
                    + " here: "
                    + question.id()
                    + " "
                    + c.getKey()
                    + ".");
  }

  /** Site question to the answers at which the cause is possible. */
  static Map<String, List<String>> parts(String answer) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (String part : Lists.parts(answer, ",")) {
      List<String> words = Lists.ids(part.replace(':', ' '));
      parts.put(words.get(0), words.subList(1, words.size()));
    }
    return parts;
  }

  /** The field of the card; empty if the cause is possible everywhere. */
  static String yaml(String answer) {
    return answer.isBlank()
        ? ""
        : parts(answer).entrySet().stream()
            .map(p -> p.getKey() + ": [" + String.join(", ", p.getValue()) + "]")
            .collect(Collectors.joining(", ", KEY + ": {", "}\n"));
  }

  /** The site of a case at which the cause is possible; empty if it is possible everywhere. */
  static String site(String answer) {
    return answer.isBlank()
        ? ""
        : parts(answer).entrySet().stream()
            .map(p -> p.getKey() + ": " + p.getValue().get(0))
            .collect(Collectors.joining(", ", "site: {", "}\n"));
  }
}
