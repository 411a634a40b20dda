package yett.command.gates;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yett.command.common.UsageException;
import yett.interview.site.SiteFacts;
import yett.knowledge.Names;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.wording.Wording;

/** Reads answers about a gate from a command line, each as {@code QUESTION=ANSWER}. */
final class GateAnswers {
  private GateAnswers() {}

  /**
   * Question to answer, in the order in which they were typed.
   *
   * @throws UsageException for the first word that is no such answer
   */
  static Map<String, String> of(List<String> words, RuleBase base) {
    Map<String, String> answers = new LinkedHashMap<>();
    words.forEach(word -> answer(word, base, answers));
    return answers;
  }

  private static void answer(String word, RuleBase base, Map<String, String> answers) {
    int equals = word.indexOf('=');
    String id = equals < 0 ? word : word.substring(0, equals);
    Map<String, SiteQuestion> questions = base.siteQuestions();
    if (equals < 0 || !questions.containsKey(id)) {
      throw new UsageException(
          "\""
              + word
              + "\" is not a question about a gate. "
              + Names.nearest(id, questions.keySet()).map(n -> "Maybe \"" + n + "\". ").orElse("")
              + "All of them: "
              + questions.values().stream()
                  .map(q -> q.id() + " (" + q.name() + ")")
                  .collect(Collectors.joining("; "))
              + ".");
    }
    SiteQuestion question = questions.get(id);
    String answer = word.substring(equals + 1).strip();
    if (!SiteFacts.canBe(question, answer)) {
      throw new UsageException(
          "\"" + answer + "\" is not an answer to: " + question.ask() + " " + possible(question));
    }
    answers.put(id, answer);
  }

  /** What was told of a gate, as it was understood: the reader sees what is not taken as usual. */
  static String told(Map<String, String> answers, RuleBase base) {
    return base.siteQuestions().values().stream()
        .filter(q -> answers.containsKey(q.id()))
        .map(q -> q.name() + ": " + Wording.site(q, answers.get(q.id())))
        .collect(Collectors.joining("; ", "Entered: ", ". All else is assumed as usual."));
  }

  static String possible(SiteQuestion question) {
    return question
        .measures()
        .map(
            m ->
                "Write a reading from "
                    + m.show(m.least())
                    + " to "
                    + m.show(m.most())
                    + ", such as "
                    + question.usual()
                    + ".")
        .orElseGet(
            () ->
                question.choices().entrySet().stream()
                    .map(e -> e.getKey() + " (" + e.getValue() + ")")
                    .collect(Collectors.joining(", ", "Known: ", ".")));
  }
}
