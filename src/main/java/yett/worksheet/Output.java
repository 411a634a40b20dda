package yett.worksheet;

import java.util.Optional;
import yett.quantity.Unit;
import yett.quantity.Units;

/**
 * One thing that a calculation tells.
 *
 * @param unit the metric one that it is shown in; empty for a result in words
 * @param customary the US customary one, the same where that system has no other
 */
public record Output(String id, String words, Optional<Unit> unit, Optional<Unit> customary) {

  public static Output reading(String id, Unit unit, String words) {
    Unit customary =
        unit == Unit.METRE || unit == Unit.FOOT
            ? Unit.FOOT
            : Units.US.preferred(unit.quantity()) == unit.quantity().canonical()
                ? unit
                : Units.US.preferred(unit.quantity());
    return reading(id, unit, customary, words);
  }

  public static Output reading(String id, Unit unit, Unit customary, String words) {
    return new Output(id, words, Optional.of(unit), Optional.of(customary));
  }

  public static Output text(String id, String words) {
    return new Output(id, words, Optional.empty(), Optional.empty());
  }

  /** A value in the canonical unit in both systems, or in one where they do not differ. */
  public String show(double canonical) {
    Unit metric = unit.orElseThrow();
    String shown = metric.quantity().show(canonical, metric);
    return customary.get() == metric
        ? shown
        : shown + " (" + metric.quantity().show(canonical, customary.get()) + ")";
  }
}
