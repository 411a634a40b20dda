package yett.bench;

import java.util.List;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * How much of what two causes would show is the same. What a cause shows of an outcome is how much
 * more often it is seen with the cause than on a sound gate. What both show, divided by what either
 * shows, over all outcomes of all checks and complaints: the Jaccard index of weighted sets
 * (published as Ruzicka's index of similarity, 1958; from memory).
 */
final class Likeness {
  /**
   * From this share on two causes are called alike; considered judgement: with less, most of what
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

  /** From 0, nothing in common, to 1, the same in all that is seen. */
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
