package yett.bench;

import java.util.List;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Measures how alike two causes look. For each outcome, what a cause shows is how much more often
 * the outcome is seen with the cause than on a sound gate. The measure is what both show divided by
 * what either shows, over all outcomes of all checks and complaints: the Jaccard index of weighted
 * sets (published as Ruzicka's index of similarity, 1958; from memory).
 */
final class Likeness {
  /**
   * From this share two causes are called alike; considered judgement. With less, most of what
   * either shows speaks against the other.
   */
  static final double ALIKE = 0.25;

  private final List<Check> seen;

  Likeness(RuleBase base) {
    seen =
        base.checks().values().stream()
            .filter(c -> c.kind() != Check.Kind.PROOF && !c.danger())
            .toList();
  }

  /** From 0, nothing in common, to 1, the same in everything that is seen. */
  double between(Cause one, Cause other) {
    double both = 0;
    double either = 0;
    for (Check check : seen) {
      double[] first = check.likelihood().get(one.id());
      double[] second = check.likelihood().get(other.id());
      for (int o = 0; o < check.otherwise().length; o++) {
        double ofFirst = more(first, check.otherwise(), o);
        double ofSecond = more(second, check.otherwise(), o);
        both += Math.min(ofFirst, ofSecond);
        either += Math.max(ofFirst, ofSecond);
      }
    }
    return either == 0 ? 0 : both / either;
  }

  private static double more(double[] row, double[] sound, int outcome) {
    return row == null ? 0 : Math.max(0, row[outcome] - sound[outcome]);
  }
}
