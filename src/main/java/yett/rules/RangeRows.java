package yett.rules;

import java.util.List;
import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Row.UsualRange;

/** Reads rows with usual ranges of readings that depend only on what is installed. */
final class RangeRows implements RowKind {
  private static final String CHECK = "check";
  private static final String HIGH = "high";

  @Override
  public List<String> columns() {
    return List.of(CHECK, "low", HIGH, "how");
  }

  @Override
  public Optional<Row> row(RowCells cells, Grounds grounds, Reason reason) {
    Optional<Check> check = cells.check(CHECK, cells.text(CHECK), true);
    if (check.isEmpty()) {
      return Optional.empty();
    }
    Measures measures = check.get().measures().get();
    double low = reading(cells, "low", measures);
    double high = reading(cells, HIGH, measures);
    if (low > high) {
      cells.problem(HIGH, "the upper end is below the lower", "Exchange the two.");
    }
    return Optional.of(
        new UsualRange(check.get().id(), low, high, cells.plain("how"), grounds, reason));
  }

  private static double reading(RowCells cells, String title, Measures measures) {
    return cells.parsed(title, text -> TableConditions.reading(measures, text)).orElse(0.0);
  }
}
