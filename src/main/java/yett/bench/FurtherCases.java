package yett.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/**
 * Writes test cases for a new cause that its most likely answers do not cover: one with a rare sign
 * of it, and one of a gate that looked alike but had another cause.
 */
final class FurtherCases {
  private static final String ODD = "odd-sign";
  private static final String NOT_IT = "not-it";
  private static final String NOT_IT_SHOWS = "not-it-shows";
  private static final String USUAL_BEFORE = "answers:\n";

  private FurtherCases() {}

  static List<Question> questions(CardQuestions asked, Map<String, String> answers) {
    RuleBase base = asked.base();
    List<Question> questions = new ArrayList<>();
    questions.add(
        shown(
                ODD,
                "What is rare with it but was seen all the same? For a second case. CHECK"
                    + " OUTCOME; CHECK OUTCOME",
                base)
            .naming(asked.vocabulary().checks()));
    questions.add(
        Question.of(
                NOT_IT,
                "Which other cause once looked like this? For a third case",
                answer -> Lists.unknown(answer, "cause", base.causes().keySet()))
            .naming(asked.vocabulary().causes())
            .usual(""));
    if (!answers.getOrDefault(NOT_IT, "").isBlank()) {
      questions.add(
          shown(NOT_IT_SHOWS, "What did that gate show? CHECK OUTCOME; CHECK OUTCOME", base)
              .needed(
                  "Name at least one look or reading that showed it; otherwise the case proves"
                      + " nothing.")
              .naming(asked.vocabulary().checks())
              .after(NewCaseForm.tells(base, answers.get(NOT_IT))));
    }
    return questions;
  }

  private static Question shown(String key, String ask, RuleBase base) {
    return Question.of(key, ask, text -> NewCaseForm.badAnswers(text, base)).usual("");
  }

  /**
   * The further cases, each after a divider; empty if none was told.
   *
   * @param first the case of the gate at which it was met
   */
  static String cards(Map<String, String> answers, String first, RuleBase base) {
    StringBuilder cards = new StringBuilder();
    String odd = answers.getOrDefault(ODD, "");
    if (!odd.isBlank()) {
      cards.append("---\n").append(oddly(first, answers.get("id"), parts(odd, base)));
    }
    String other = answers.getOrDefault(NOT_IT, "");
    if (!other.isBlank()) {
      cards.append("---\n").append(notIt(answers, first, other.strip(), base));
    }
    return cards.toString();
  }

  /** The checks whose answers the author named for the case with a rare sign. */
  static Set<String> odd(Map<String, String> answers, RuleBase base) {
    return parts(answers.getOrDefault(ODD, ""), base).keySet();
  }

  /** The same for the case with another cause. */
  static Set<String> notIt(Map<String, String> answers, RuleBase base) {
    return parts(answers.getOrDefault(NOT_IT_SHOWS, ""), base).keySet();
  }

  private static Map<String, String> parts(String text, RuleBase base) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (String part : Lists.shown(text, base.checks().keySet())) {
      String[] words = part.split("[\\s:]+", 2);
      parts.put(words[0], words[1]);
    }
    return parts;
  }

  /** The first case with some answers replaced or added. The story is of the first gate only. */
  private static String oddly(String first, String id, Map<String, String> odd) {
    String text = first.replaceFirst("(?m)^case: .*$", "case: " + id + "-oddly-met");
    text = text.replaceFirst("(?m)^story: .*\n", "");
    for (String check : odd.keySet()) {
      text = text.replaceFirst("(?m)^  " + check + ": .*\n", "");
    }
    StringBuilder lines = new StringBuilder();
    odd.forEach((check, shown) -> lines.append("  " + check + ": " + shown + "\n"));
    return text.contains(USUAL_BEFORE)
        ? text.replace(USUAL_BEFORE, USUAL_BEFORE + lines)
        : text.replace("others: usual\n", USUAL_BEFORE + lines + "others: usual\n");
  }

  /**
   * The case of a gate with the same complaints and another cause. What was seen instead comes from
   * the author. Everything else is as the other cause usually shows it, because a gate with that
   * cause that looks sound everywhere else would not be realistic.
   */
  private static String notIt(
      Map<String, String> answers, String first, String cause, RuleBase base) {
    CardLines text =
        new CardLines()
            .line("case", answers.get("id") + "-looked-so")
            .line("person", "technician")
            .raw(line(first, "site: ").orElse(""))
            .raw(line(first, "complaints: ").orElse(""));
    Map<String, String> shown = parts(answers.getOrDefault(NOT_IT_SHOWS, ""), base);
    usually(cause, OnlyIf.parts(answers.getOrDefault(OnlyIf.KEY, "")), base)
        .forEach(shown::putIfAbsent);
    text.raw(shown.isEmpty() ? "" : USUAL_BEFORE);
    shown.forEach((check, outcome) -> text.raw("  " + check + ": " + outcome + "\n"));
    return text.line("others", "usual")
        .ids("truth", List.of(cause))
        .ids("repairs", repair(cause, base))
        .toString();
  }

  /** What a cause usually shows at a usual gate, changed only by what the new cause needs. */
  private static Map<String, String> usually(
      String cause, Map<String, List<String>> site, RuleBase base) {
    Map<String, String> needed = new LinkedHashMap<>();
    site.forEach((question, allowed) -> needed.put(question, allowed.get(0)));
    Site gate = new SiteFacts(base).site(needed);
    Map<String, double[]> rows = new LinkedHashMap<>();
    base.ordinaryChecks()
        .filter(c -> c.likelihood().containsKey(cause) && gate.allows(c))
        .forEach(c -> rows.put(c.id(), c.likelihood().get(cause)));
    return SignsByEffects.telling(rows, base);
  }

  private static Optional<String> line(String text, String field) {
    return text.lines().filter(l -> l.startsWith(field)).findFirst().map(l -> l + "\n");
  }

  /** The repair that removes a cause most certainly. */
  private static List<String> repair(String cause, RuleBase base) {
    return base.removing(cause).stream().limit(1).map(Repair::id).toList();
  }
}
