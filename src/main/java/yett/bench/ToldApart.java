package yett.bench;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * The check that best tells two causes apart.
 *
 * @param distance 0 not at all, 1 for certain (total variation)
 */
record ToldApart(Check check, double distance) {

  /** The checks among which it is chosen. */
  static List<Check> checks(RuleBase base) {
    return base.ordinaryChecks().filter(c -> !c.danger()).toList();
  }

  /**
   * @param checks to choose from, at least one
   */
  static ToldApart best(List<Check> checks, String one, String other) {
    return best(checks, check -> check.likelihood().getOrDefault(one, check.otherwise()), other);
  }

  /**
   * @param row what the one cause shows on a check
   */
  static ToldApart best(List<Check> checks, Function<Check, double[]> row, String other) {
    return checks.stream()
        .map(
            check ->
                new ToldApart(
                    check,
                    Neighbours.distance(
                        row.apply(check),
                        check.likelihood().getOrDefault(other, check.otherwise()))))
        .max(Comparator.comparingDouble(ToldApart::distance))
        .orElseThrow();
  }
}
