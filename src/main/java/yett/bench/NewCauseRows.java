package yett.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Asks for the rows of a new cause next to those of its look-alikes, and writes them in the same
 * order.
 */
final class NewCauseRows {
  private final RuleBase base;
  private final Map<String, String> answers;
  private final Neighbours neighbours;
  private final SignsByEffects implied;

  NewCauseRows(RuleBase base, Map<String, String> answers) {
    this.base = base;
    this.answers = answers;
    this.neighbours = new Neighbours(base, Lists.ids(answers.getOrDefault("like", "")));
    this.implied = new EffectChoice(base).implied(answers);
  }

  /** The complaints that the look-alikes are known to cause, the most likely first. */
  List<String> said() {
    List<String> lines =
        neighbours.complaints().stream()
            .limit(6)
            .map(c -> c.id() + ": " + neighbours.said(c))
            .toList();
    return lines.isEmpty() ? List.of() : joined("Of those people say:", lines);
  }

  private static List<String> joined(String first, List<String> rest) {
    List<String> all = new ArrayList<>(List.of(first));
    all.addAll(rest);
    return all;
  }

  /** What the chances of complaints are taken to mean. */
  List<String> meant(String complaints) {
    List<String> lines = new ArrayList<>();
    RowAnswer.parts(complaints)
        .forEach(
            (id, word) -> {
              Check check = base.checks().get(id);
              double[] row = RowAnswer.row(Check.SAID + " " + word, check);
              lines.addAll(readBack(check).lines(row, List.of(Check.SAID)));
            });
    return lines;
  }

  private RowInSentences readBack(Check check) {
    return new RowInSentences(check, neighbours.causes());
  }

  /** A question for each check, with a progress count, because people ask when it ends. */
  List<Question> questions(List<Check> checks, String word) {
    List<Question> rows = new ArrayList<>();
    for (Check check : checks) {
      rows.add(question(check, word + (rows.size() + 1) + " of " + checks.size() + ", "));
    }
    return rows;
  }

  /** The same for companion checks. An effect that was not named yet is named in the question. */
  List<Question> companions(List<Companions.Companion> companions) {
    List<Check> checks = companions.stream().map(Companions.Companion::check).toList();
    List<Question> rows = new ArrayList<>();
    for (Question row : questions(checks, "Mostly seen with these, ")) {
      List<String> lines = new ArrayList<>(row.before());
      companions
          .get(rows.size())
          .effect()
          .map(
              e ->
                  "It mostly comes from " + e.id() + " (" + e.name() + "), which you did not name.")
          .ifPresent(lines::add);
      rows.add(row.after(lines));
    }
    return rows;
  }

  private Question question(Check check, String place) {
    List<String> before = new ArrayList<>();
    before.add(place + check.id() + ": " + check.ask());
    before.addAll(beside(check));
    List<Candidate> outcomes = Vocabulary.outcomes(check);
    return Question.of(
            check.id(),
            "And with the new cause? OUTCOME often, OUTCOME sometimes, as you met it (? lists them);"
                + " empty: as "
                + unsaid(check),
            answer -> RowAnswer.complaint(answer, Lists.ids(outcomes)))
        .naming(Vocabulary.both(outcomes, Vocabulary.chances()))
        .after(before)
        .usual("")
        .telling(answer -> meant(check, answer));
  }

  private List<String> meant(Check check, String answer) {
    return answer.isBlank()
        ? List.of()
        : readBack(check).lines(RowAnswer.row(answer, check), RowAnswer.parts(answer).keySet());
  }

  /** The rows with which a new row is compared. */
  private List<String> beside(Check check) {
    List<String> lines = new ArrayList<>(neighbours.rows(check));
    implied
        .row(check)
        .ifPresent(row -> lines.add("by its effects: " + Neighbours.shown(check, row)));
    return lines;
  }

  /** The row that is assumed if nothing is said of it. */
  private String unsaid(Check check) {
    return implied.row(check).isPresent() ? "its effects say" : "on a sound gate";
  }

  /** The rows in the form of a card, each below those of the look-alikes. */
  String yaml(List<Check> checks) {
    StringBuilder rows = new StringBuilder();
    RowAnswer.parts(answers.getOrDefault("complaints", ""))
        .forEach((id, word) -> rows.append("  ").append(id + ": " + word).append('\n'));
    StringBuilder left = new StringBuilder();
    for (Check check : checks) {
      String answer = answers.getOrDefault(check.id(), "");
      if (answer.isBlank()) {
        left.append("  # " + check.id() + ": nothing said, so as ");
        left.append(unsaid(check)).append('\n');
      } else {
        beside(check).forEach(line -> rows.append("  #   ").append(line).append('\n'));
        rows.append("  ").append(check.id()).append(": ");
        rows.append(RowText.of(answer, check)).append('\n');
      }
    }
    return (rows.isEmpty() ? "" : "shows:\n" + rows) + left;
  }
}
