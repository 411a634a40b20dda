package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Asks for a new effect and its signs. Causes that lead to it name it on their own cards. */
final class NewEffect implements NewCard {
  private static final String CHECKS = "checks";

  private final RuleBase base;
  private final CardQuestions asked;
  private final EffectChoice effects;

  NewEffect(CardQuestions asked) {
    this.base = asked.base();
    this.asked = asked;
    this.effects = new EffectChoice(base);
  }

  @Override
  public List<Question> questions(Map<String, String> answers) {
    return questions(answers, checks(answers).stream().map(NewEffect::row).toList());
  }

  @Override
  public List<Question> outline() {
    return questions(
        Map.of(),
        List.of(
            Question.of(
                "CHECK",
                "For each of the checks, what is seen of it",
                answer -> Optional.empty())));
  }

  private List<Question> questions(Map<String, String> answers, List<Question> rows) {
    List<Question> questions = new ArrayList<>();
    questions.add(asked.id("effect", "leaf-shakes", base.effects().keySet()));
    questions.add(
        Question.words("name", "What the machine does, in a few words, such as: The leaf shakes"));
    questions.add(asked.area());
    questions.add(asked.complaints("What do people say of it?"));
    questions.add(asked.checks(CHECKS, "Which checks show it? Ids, with commas"));
    questions.addAll(rows);
    if (effects.any()) {
      String area = answers.containsKey("area") ? CardQuestions.areaOf(answers) : "";
      questions.add(effects.question("What else does the machine do then?", area));
    }
    questions.add(CardQuestions.source());
    return questions;
  }

  private List<Check> checks(Map<String, String> answers) {
    return Lists.ids(answers.getOrDefault(CHECKS, "")).stream()
        .distinct()
        .map(base.checks()::get)
        .filter(check -> check != null)
        .toList();
  }

  private static Question row(Check check) {
    List<Candidate> outcomes = Vocabulary.outcomes(check);
    return Question.of(
            check.id(),
            "What is seen of it alone? OUTCOME often, OUTCOME sometimes (? lists them)",
            answer ->
                answer.isBlank()
                    ? Optional.of("Name an outcome.")
                    : RowAnswer.complaint(answer, Lists.ids(outcomes)))
        .naming(Vocabulary.both(outcomes, Vocabulary.chances()))
        .after(
            List.of(
                check.id() + ": " + check.ask(),
                "a sound gate: " + Neighbours.shown(check, check.otherwise())));
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    StringBuilder shows = new StringBuilder();
    RowAnswer.parts(answers.get("complaints"))
        .forEach((id, word) -> shows.append("  " + id + ": " + word + "\n"));
    for (Check check : checks(answers)) {
      String row = RowText.of(answers.get(check.id()), check);
      shows.append("  " + check.id() + ": " + row + "\n");
    }
    CardLines text =
        new CardLines()
            .line("effect", answers.get("id"))
            .words("name", answers.get("name"))
            .line("area", CardQuestions.areaOf(answers))
            .raw(shows.isEmpty() ? "" : "shows:\n" + shows)
            .raw(effects.yaml(answers))
            .words("source", answers.get("source"));
    SortedMap<String, String> files = new TreeMap<>();
    files.put(CardQuestions.areaOf(answers) + "/" + answers.get("id") + ".yaml", text.toString());
    return files;
  }
}
