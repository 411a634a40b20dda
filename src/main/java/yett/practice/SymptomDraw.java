package yett.practice;

import java.util.Collection;
import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Draws what checks show at a gate with given causes. For each cause an outcome is drawn once from
 * its row on the card, and the most telling of these outcomes is shown (noisy-MAX, as in the
 * belief). A check therefore shows the same whenever it is asked, and a repair takes away only what
 * its causes contributed. The half percent of mistakes that the belief allows for is left out,
 * because they are a person's and not the gate's.
 */
record SymptomDraw(RuleBase base, Noise noise) {
  /**
   * @param world another number gives another gate with the same causes
   * @return position of the outcome
   */
  int outcome(Check check, Collection<String> causes, int world) {
    return copied(check, causes, world).orElseGet(() -> made(check, causes, world));
  }

  private Optional<Integer> copied(Check check, Collection<String> causes, int world) {
    return check
        .repeats()
        .filter(r -> noise.even(check.id() + " repeats " + world) < r.share())
        .map(r -> base.checks().get(r.check()))
        .map(o -> check.indexOf(o.outcomes().get(outcome(o, causes, world)).id()))
        .filter(i -> i >= 0);
  }

  private int made(Check check, Collection<String> causes, int world) {
    // A gate with nothing wrong passes its proofs; otherwise no repair could ever end an exercise.
    boolean proof = check.kind() == Check.Kind.PROOF;
    int most =
        proof ? 0 : quantile(check.otherwise(), noise.even(check.id() + " by itself " + world));
    for (String cause : causes) {
      double[] row = check.likelihood().get(cause);
      if (row != null) {
        double at = noise.even(check.id() + " by " + cause + " " + world);
        most = Math.max(most, quantile(row, at));
      }
    }
    return most;
  }

  private static int quantile(double[] row, double at) {
    double left = at;
    for (int i = 0; i < row.length; i++) {
      left -= row[i];
      if (left < 0) {
        return i;
      }
    }
    int last = row.length - 1;
    while (last > 0 && row[last] == 0) {
      last--; // rounding must not give an impossible outcome
    }
    return last;
  }
}
