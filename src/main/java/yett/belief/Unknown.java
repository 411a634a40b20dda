package yett.belief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Cause;
import yett.knowledge.Check;

/**
 * Models a fault that no card describes. It looks like some known cause, but less sharply, and
 * nobody knows which; or it looks like none. So there is one kind for each cause with a card (its
 * double), rarer than that cause by the ratio of unknown to known faults, and one kind of its own.
 * If a repair that should have removed a cause did not cure, that speaks for the double. A double
 * has no row on checks where its cause has none, so that ordinary answers do not speak against it.
 */
final class Unknown {
  /** Share of unknown faults that look like no known cause. */
  static final double LIKE_NONE = 0.2;

  /**
   * Share of a double's row that is spread evenly over the outcomes, for the ways in which it
   * differs from its cause.
   */
  static final double OWN_WAY = 0.1;

  private final List<Cause> known = new ArrayList<>();
  private final boolean there;
  private final double knownPriors;

  /**
   * @param causes those that are possible at the gate
   */
  Unknown(List<Cause> causes) {
    there = causes.stream().anyMatch(c -> c.id().equals(Cause.NOT_IN_RULE_BASE));
    for (Cause cause : causes) {
      boolean special =
          cause.id().equals(Cause.NOT_IN_RULE_BASE) || cause.id().equals(Cause.NOTHING_WRONG);
      if (there && !special) {
        known.add(cause);
      }
    }
    knownPriors = known.stream().mapToDouble(Cause::prior).sum();
  }

  /** Causes that have an unknown double. */
  List<Cause> known() {
    return known;
  }

  static String like(Cause cause) {
    return like(cause.id());
  }

  static String like(String cause) {
    return Cause.NOT_IN_RULE_BASE + " like " + cause;
  }

  /** Share of its prior that a cause keeps after its kinds have taken theirs. */
  double share(Cause cause) {
    return cause.id().equals(Cause.NOT_IN_RULE_BASE) && !known.isEmpty() ? LIKE_NONE : 1;
  }

  /** Share of the unknown faults that look like a cause. */
  double shareLike(Cause cause) {
    return (1 - LIKE_NONE) * cause.prior() / knownPriors;
  }

  /** The row of each kind on a check, by the kind's name in the model. */
  Map<String, double[]> rows(Check check) {
    Map<String, double[]> rows = new LinkedHashMap<>();
    if (!there) {
      return rows;
    }
    double[] said = check.likelihood().get(Cause.NOT_IN_RULE_BASE);
    rows.put(Cause.NOT_IN_RULE_BASE, said != null ? said : blurred(mean(check)));
    for (Cause cause : known) {
      if (check.likelihood().containsKey(cause.id())) {
        rows.put(like(cause), blurred(check.likelihood().get(cause.id())));
      }
    }
    return rows;
  }

  /** Share of a double's row that is spread evenly, given that share of its cause's row. */
  static double evenly(double ofCause) {
    return 1 - (1 - ofCause) * (1 - OWN_WAY);
  }

  private double[] mean(Check check) {
    double[] ordinary = ordinary(check);
    double[] mean = new double[ordinary.length];
    for (Cause cause : known) {
      double[] row = check.likelihood().getOrDefault(cause.id(), ordinary);
      for (int i = 0; i < mean.length; i++) {
        mean[i] += row[i] / known.size();
      }
    }
    return known.isEmpty() ? ordinary : mean;
  }

  private static double[] ordinary(Check check) {
    double[] row = new double[check.outcomes().size()];
    row[0] = 1;
    return row;
  }

  private static double[] blurred(double[] row) {
    double[] blurred = new double[row.length];
    for (int i = 0; i < row.length; i++) {
      blurred[i] = (1 - OWN_WAY) * row[i] + OWN_WAY / row.length;
    }
    return blurred;
  }
}
