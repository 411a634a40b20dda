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
import yett.rules.UsualRange.Gates;

/**
 * A row of a table with the place where it stands.
 *
 * @param line in a file of text, 0 in a workbook
 * @param place where its check stands, as people find it
 * @param gates what it says of the site, by question
 */
record TableRow(
    UsualRange range,
    String file,
    int line,
    String place,
    Check check,
    Map<SiteQuestion, Gates> gates) {

  /** Its name, by which an add-on can switch it off. */
  String rule() {
    return range.reason().rule();
  }

  /** What is wrong if an earlier row gives another range for the same reading at the same gate. */
  Optional<Problem> clash(TableRow earlier) {
    boolean other = range.low() != earlier.range.low() || range.high() != earlier.range.high();
    if (!check.id().equals(earlier.check.id()) || !other || !together(earlier)) {
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
                + check.id()
                + "\"",
            "Change the conditions of one, so that no gate meets both. An add-on can switch the other"
                + " off: rule: [\""
                + earlier.rule()
                + "\"]."));
  }

  /** Whether one gate can meet the conditions of both, and be asked all that they speak of. */
  private boolean together(TableRow other) {
    boolean meet =
        gates.entrySet().stream()
            .filter(e -> other.gates.containsKey(e.getKey()))
            .allMatch(e -> TableConditions.meet(e.getValue(), other.gates.get(e.getKey())));
    return meet && canBeAsked(other);
  }

  /** Whether at one gate all questions are asked that the two speak of. */
  private boolean canBeAsked(TableRow other) {
    Map<String, Set<String>> left = new LinkedHashMap<>();
    for (TableRow row : List.of(this, other)) {
      row.check.onlyIf().forEach((question, choices) -> keep(left, question, choices));
      row.gates.forEach(
          (question, gates) -> {
            question.onlyIf().forEach((asked, choices) -> keep(left, asked, choices));
            if (question.measures().isEmpty()) {
              keep(left, question.id(), gates.choices());
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
