package yett.rules;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Check;
import yett.knowledge.Problem;
import yett.knowledge.SiteQuestion;
import yett.rules.Row.UsualRange;

/**
 * A row of a table with its position.
 *
 * @param line in a file of text, 0 in a workbook
 * @param place of the cell with its subject, as people find it
 * @param gates its conditions on the site, by question
 */
record TableRow(Row row, String file, int line, String place, Map<SiteQuestion, Accepted> gates) {

  /** The name of the row, by which an add-on can switch it off. */
  String rule() {
    return row.reason().rule();
  }

  boolean givesRange() {
    return row instanceof UsualRange;
  }

  /** The problem if an earlier row gives another range for the same reading at the same gate. */
  Optional<Problem> clash(TableRow earlier, Map<String, Check> checks) {
    boolean clashes =
        row instanceof UsualRange range
            && earlier.row instanceof UsualRange other
            && range.check().equals(other.check())
            && (range.low() != other.low() || range.high() != other.high())
            && together(earlier, checks.get(range.check()));
    if (!clashes) {
      return Optional.empty();
    }
    String where = earlier.file.equals(file) ? earlier.place : earlier.file + ", " + earlier.place;
    return Optional.of(
        new Problem(
            DecisionTables.CLASH,
            file,
            line,
            Math.min(1, line),
            place
                + ": there are gates for which "
                + where
                + " gives another usual range for \""
                + ((UsualRange) row).check()
                + "\"",
            "Change the conditions of one, so that no gate meets both. An add-on can switch the other"
                + " off: rule: [\""
                + earlier.rule()
                + "\"]."));
  }

  /**
   * Whether one gate can meet the conditions of both rows and is asked all their site questions.
   */
  private boolean together(TableRow other, Check check) {
    boolean meet =
        gates.entrySet().stream()
            .filter(e -> other.gates.containsKey(e.getKey()))
            .allMatch(e -> e.getValue().meets(other.gates.get(e.getKey())));
    return meet && canBeAsked(other, check);
  }

  /** Whether one gate can be asked all site questions of the two rows. */
  private boolean canBeAsked(TableRow other, Check check) {
    Map<String, Set<String>> left = new LinkedHashMap<>();
    check.onlyIf().forEach((question, choices) -> keep(left, question, choices));
    for (TableRow one : List.of(this, other)) {
      one.gates.forEach(
          (question, accepted) -> {
            question.onlyIf().forEach((asked, choices) -> keep(left, asked, choices));
            if (question.measures().isEmpty()) {
              keep(left, question.id(), accepted.words());
            }
          });
    }
    return left.values().stream().noneMatch(Set::isEmpty);
  }

  private static void keep(
      Map<String, Set<String>> left, String question, Collection<String> choices) {
    left.computeIfAbsent(question, q -> new LinkedHashSet<>(choices)).retainAll(choices);
  }
}
