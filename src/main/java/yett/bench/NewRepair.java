package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** Asks for a new repair for existing causes. */
final class NewRepair implements NewCard {
  private final RuleBase base;
  private final CardQuestions asked;

  NewRepair(CardQuestions asked) {
    this.base = asked.base();
    this.asked = asked;
  }

  @Override
  public List<Question> questions(Map<String, String> answers) {
    List<Question> questions = new ArrayList<>();
    questions.add(asked.id("repair", "replace-chain-bracket", base.repairs().keySet()));
    questions.add(
        Question.words("name", "What is done, as an order, such as: Replace the bracket"));
    questions.add(asked.area());
    questions.add(
        Question.of(
                "removes",
                "Which causes does it remove? Ids, each with a word if you like: chain-slack"
                    + " always",
                answer ->
                    answer.isBlank()
                        ? Optional.of("Name at least one cause.")
                        : CardQuestions.chances(answer, "cause", base.causes().keySet()))
            .naming(Vocabulary.both(asked.vocabulary().causes(), Vocabulary.chances())));
    questions.addAll(work(asked, ""));
    questions.add(CardQuestions.source());
    return questions;
  }

  /** Questions that every repair needs, including one that is written together with its cause. */
  static List<Question> work(CardQuestions asked, String prefix) {
    return Stream.of(
            Question.of("minutes", "How many minutes does it take", CardQuestions.number(0, 1440)),
            Question.words("steps", "Its steps, in order, divided by semicolons")
                .telling(NewRepair::only),
            asked.needs(),
            CardQuestions.who(),
            asked.hazards(),
            asked.entails(),
            proofs(asked))
        .map(q -> q.called(prefix + q.key()))
        .toList();
  }

  /** What to say of a single step: whoever types one step a line has typed the first only. */
  private static List<String> only(String steps) {
    return Lists.parts(steps, ";").size() > 1
        ? List.of()
        : List.of("This is one step. More go on the same line, divided by semicolons.");
  }

  private static String sentence(String step) {
    return Wording.capital(step) + (step.matches("(?s).*[.!?:]") ? "" : ".");
  }

  /**
   * Asks for the proofs. In an add-on a repair must have some; elsewhere there is a remark if it
   * has none.
   */
  private static Question proofs(CardQuestions asked) {
    Question question =
        CardQuestions.ids(
            "proofs",
            "Which proofs must pass after it, before the gate returns to service? Ids, with commas",
            "proof",
            asked.vocabulary().proofs());
    RuleBase base = asked.base();
    return base.addOns().isEmpty() || base.proofs().isEmpty()
        ? question
        : question.needed("Name one at least: no gate goes back to service untried.");
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    CardLines text = new CardLines();
    card(text, answers, "", answers.get("id"), answers.get("name"), answers.get("removes"));
    SortedMap<String, String> files = new TreeMap<>();
    files.put(CardQuestions.areaOf(answers) + "/" + answers.get("id") + ".yaml", text.toString());
    return files;
  }

  /**
   * Writes the card.
   *
   * @param removes causes, each with or without a word for the chance
   */
  static void card(
      CardLines text,
      Map<String, String> answers,
      String prefix,
      String id,
      String name,
      String removes) {
    List<String> parts = new ArrayList<>();
    RowAnswer.parts(removes)
        .forEach(
            (cause, word) ->
                parts.add(cause + ": " + (removes.contains(" ") ? word : "nearly always")));
    text.line("repair", id)
        .words("name", name)
        .lines(
            "steps",
            Lists.parts(answers.get(prefix + "steps"), ";").stream()
                .map(NewRepair::sentence)
                .toList())
        .line("removes", "{" + String.join(", ", parts) + "}")
        .line("minutes", answers.get(prefix + "minutes"))
        .ids("needs", Lists.ids(answers.get(prefix + "needs")))
        .line("who", answers.get(prefix + "who"))
        .ids("hazards", Lists.ids(answers.get(prefix + "hazards")))
        .ids(
            MeasuredFirst.KEY,
            MeasuredFirst.ids(answers.getOrDefault(prefix + MeasuredFirst.KEY, "")))
        .ids("entails", Lists.ids(answers.get(prefix + "entails")))
        .ids("proofs", Lists.ids(answers.get(prefix + "proofs")))
        .words("source", answers.get("source"));
  }
}
