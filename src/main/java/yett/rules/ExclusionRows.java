package yett.rules;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Check;
import yett.rules.Row.Answers;
import yett.rules.Row.Exclusion;

/** Reads rows with answers to two checks that cannot both be right between the same repairs. */
final class ExclusionRows implements RowKind {
  private static final String CHECK = " check";
  private static final String ANSWER = " answer";

  @Override
  public List<String> columns() {
    return List.of("first check", "first answer", "second check", "second answer");
  }

  @Override
  public boolean needsGrounds() {
    return false;
  }

  @Override
  public Optional<Row> row(RowCells cells, Grounds grounds, Reason reason) {
    Optional<Answers> first = answers(cells, "first");
    Optional<Answers> second = answers(cells, "second");
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Exclusion(first.get(), second.get(), grounds, reason));
  }

  private static Optional<Answers> answers(RowCells cells, String which) {
    List<String> ids = TableConditions.alternatives(cells.text(which + CHECK)).toList();
    Set<Accepted> accepted = new HashSet<>();
    for (String id : ids) {
      Optional<Check> check = cells.check(which + CHECK, id, false);
      if (check.isEmpty()) {
        return Optional.empty();
      }
      cells
          .parsed(which + ANSWER, text -> TableConditions.accepted(check.get(), text))
          .ifPresent(accepted::add);
    }
    if (accepted.size() > 1) {
      cells.problem(
          which + ANSWER,
          "this does not mean the same for each of these checks",
          "Give each a row of its own.");
    }
    return accepted.stream().findFirst().map(a -> new Answers(Set.copyOf(ids), a));
  }
}
