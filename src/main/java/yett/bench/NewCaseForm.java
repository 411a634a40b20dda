package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.Check;
import yett.knowledge.Names;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.quantity.ReadingException;

/** Asks for a new test case: a gate as it was found, and what was really wrong with it. */
final class NewCaseForm implements NewCard {
  private final RuleBase base;
  private final CardQuestions asked;

  NewCaseForm(CardQuestions asked) {
    this.base = asked.base();
    this.asked = asked;
  }

  @Override
  public List<Question> questions(Map<String, String> answers) {
    List<Question> questions = new ArrayList<>();
    questions.add(asked.id("case", "bracket-of-the-ferry-gate", List.of()));
    questions.add(asked.area());
    questions.add(Question.words("story", "What happened, in a sentence or two"));
    questions.add(
        Question.of("person", "Who answers", w -> CardQuestions.oneOf(w, Role.words()))
            .naming(CardQuestions.roles())
            .usual(Role.TECHNICIAN.word()));
    questions.add(
        CardQuestions.ids(
            "complaints",
            "What do people say? Ids, with commas",
            "complaint",
            asked.vocabulary().complaints()));
    questions.add(
        CardQuestions.ids(
            "history", "What happened lately? Ids", "history", asked.vocabulary().histories()));
    questions.add(asked.causes("truth", "What is really wrong? Ids of causes"));
    questions.add(
        Question.of(
                "answers",
                "What was out of the ordinary? Such as: chain-sag 190 mm; noise-kind slap",
                text -> badAnswers(text, base))
            .after(tells(base, answers.getOrDefault("truth", "")))
            .naming(asked.vocabulary().checks())
            .usual(""));
    questions.add(
        CardQuestions.ids(
            "repairs", "What is the right repair? Ids", "repair", asked.vocabulary().repairs()));
    return questions;
  }

  /** The checks that best tell the true causes. */
  static List<String> tells(RuleBase base, String causes) {
    List<Check> checks = new Neighbours(base, Lists.ids(causes)).checks();
    return checks.stream()
        .map(
            c -> c.id() + ": " + String.join(", ", c.outcomes().stream().map(o -> o.id()).toList()))
        .toList();
  }

  static Optional<String> badAnswers(String text, RuleBase base) {
    return Lists.shown(text, base.checks().keySet()).stream()
        .map(part -> part.split("[\\s:]+", 2))
        .map(
            part ->
                part.length < 2
                    ? Optional.of("Write what \"" + part[0] + "\" showed after it.")
                    : Lists.unknown(part[0], "check", base.checks().keySet())
                        .or(() -> badShown(base.checks().get(part[0]), part[1])))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /**
   * What is wrong with a shown outcome, reading, "cannot tell" or "not now". Lists are left to the
   * reader of cases.
   */
  private static Optional<String> badShown(Check check, String shown) {
    List<String> known = new ArrayList<>(Lists.ids(Vocabulary.outcomes(check)));
    known.addAll(List.of("cannot tell", "does not apply", "not now"));
    if (shown.startsWith("[") || known.contains(shown)) {
      return Optional.empty();
    }
    if (check.measured()) {
      try {
        check.measures().orElseThrow().parse(shown);
        return Optional.empty();
      } catch (ReadingException e) {
        return Optional.of(
            "%s: %s Or one of: %s."
                .formatted(check.id(), e.getMessage(), String.join(", ", known)));
      }
    }
    return Optional.of(
        "\"" + shown + "\" is not an outcome of " + check.id() + ". " + Names.advice(shown, known));
  }

  @Override
  public SortedMap<String, String> files(Map<String, String> answers) {
    CardLines text =
        new CardLines()
            .line("case", answers.get("id"))
            .words("story", answers.get("story"))
            .line("person", answers.get("person"))
            .ids("complaints", Lists.ids(answers.get("complaints")))
            .ids("history", Lists.ids(answers.get("history")));
    List<String> shown = Lists.shown(answers.get("answers"), base.checks().keySet());
    text.raw(shown.isEmpty() ? "" : "answers:\n");
    for (String part : shown) {
      String[] words = part.split("[\\s:]+", 2);
      text.raw("  " + words[0] + ": " + words[1] + "\n");
    }
    text.line("others", "usual")
        .ids("truth", Lists.ids(answers.get("truth")))
        .ids("repairs", Lists.ids(answers.get("repairs")));
    SortedMap<String, String> files = new TreeMap<>();
    files.put(
        CardQuestions.areaOf(answers) + "/" + answers.get("id") + ".case.yaml", text.toString());
    return files;
  }
}
