package yett.command.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.bench.NewCard;
import yett.bench.Question;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.knowledge.Names;

/** Answers about a new card that were given in the command, as key=value. */
final class GivenAnswers {
  private GivenAnswers() {}

  static Map<String, String> of(List<String> words) {
    Map<String, String> given = new LinkedHashMap<>();
    for (String word : words) {
      String[] parts = word.split("=", 2);
      if (parts.length < 2) {
        throw new UsageException(Words.quoted(word) + " is not an answer; write it as key=value.");
      }
      given.put(parts[0], parts[1].strip());
    }
    return given;
  }

  /** All answers for use without a terminal: those given, and the usual ones for the rest. */
  static Map<String, String> complete(NewCard card, Map<String, String> given) {
    Map<String, String> answers = new LinkedHashMap<>();
    List<String> complaints = new ArrayList<>();
    for (Optional<Question> next = AnswersSoFar.next(card, answers);
        next.isPresent();
        next = AnswersSoFar.next(card, answers)) {
      Question question = next.get();
      Optional<String> answer = Optional.ofNullable(given.get(question.key())).or(question::usual);
      answer
          .flatMap(a -> question.complaint().apply(a))
          .ifPresent(c -> complaints.add(question.key() + ": " + c));
      if (answer.isEmpty()) {
        complaints.add(question.key() + "=… is missing: " + question.ask());
      }
      answers.put(question.key(), answer.orElse(""));
    }
    complaints.addAll(unknown(given, answers));
    if (complaints.isEmpty()) {
      return answers;
    }
    complaints.add(
        "\"knowledge find WORD\" looks up ids, \"help knowledge new KIND\" lists the keys.");
    throw new UsageException(String.join("\n", complaints));
  }

  private static List<String> unknown(Map<String, String> given, Map<String, String> answers) {
    return given.keySet().stream()
        .filter(key -> !answers.containsKey(key))
        .map(key -> "\"" + key + "\" is not asked here. " + Names.advice(key, answers.keySet()))
        .toList();
  }
}
