package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** A new repair for causes that are there. */
final class NewRepair implements NewCard {
  private final RuleBase base;
  private final Asked asked;

  NewRepair(Asked asked) {
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
                        ? java.util.Optional.of("Name at least one cause.")
                        : Asked.chances(answer, "cause", base.causes().keySet()))
            .suggesting(List.copyOf(base.causes().keySet())));
    questions.addAll(work(asked, ""));
    questions.add(Asked.source());
    return questions;
  }

  /** What any repair asks, also one that is written with its cause. */
  static List<Question> work(Asked asked, String prefix) {
    List<String> proofs = asked.base().proofs().stream().map(Check::id).toList();
    return List.of(
        with(
            prefix, Question.of("minutes", "How many minutes does it take", Asked.number(0, 1440))),
        with(prefix, Question.words("steps", "Its steps, in order, divided by semicolons")),
        with(prefix, asked.needs()),
        with(prefix, Asked.who()),
        with(prefix, asked.hazards()),
        with(prefix, asked.entails()),
        with(
            prefix,
            Asked.ids("proofs", "Proofs that it makes necessary, with commas", "proof", proofs)));
  }

  private static Question with(String prefix, Question q) {
    return new Question(
        prefix + q.key(), q.before(), q.ask(), q.suggestions(), q.usual(), q.complaint());
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    CardText text = new CardText();
    card(text, answers, "", answers.get("id"), answers.get("name"), answers.get("removes"));
    SortedMap<String, String> files = new TreeMap<>();
    files.put(answers.get("area") + "/" + answers.get("id") + ".yaml", text.toString());
    return files;
  }

  /**
   * Writes the card.
   *
   * @param removes causes, each with a word or without
   */
  static void card(
      CardText text,
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
        .lines("steps", Lists.parts(answers.get(prefix + "steps"), ";"))
        .line("removes", "{" + String.join(", ", parts) + "}")
        .line("minutes", answers.get(prefix + "minutes"))
        .ids("needs", Lists.ids(answers.get(prefix + "needs")))
        .line("who", answers.get(prefix + "who"))
        .ids("hazards", Lists.ids(answers.get(prefix + "hazards")))
        .ids("entails", Lists.ids(answers.get(prefix + "entails")))
        .ids("proofs", Lists.ids(answers.get(prefix + "proofs")))
        .words("source", answers.get("source"));
  }
}
