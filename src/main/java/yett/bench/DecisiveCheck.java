package yett.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * The check that best tells a cause from a sound gate and from everything that looks like it.
 *
 * @param least how well it tells the cause from the one that is hardest to tell (total variation)
 * @param shows the outcome that speaks for the cause most
 */
record DecisiveCheck(Check check, double least, Check.Outcome shows) {

  static Optional<DecisiveCheck> of(Cause cause, List<LookAlike> alike, RuleBase base) {
    return ToldApart.checks(base).stream()
        .filter(c -> c.likelihood().containsKey(cause.id()))
        .map(c -> new DecisiveCheck(c, least(c, cause, alike), shows(c, cause)))
        .filter(d -> d.least() > 0)
        .max(Comparator.comparingDouble(DecisiveCheck::least));
  }

  private static double least(Check check, Cause cause, List<LookAlike> alike) {
    double[] row = check.likelihood().get(cause.id());
    return alike.stream()
        .map(a -> check.likelihood().getOrDefault(a.cause().id(), check.otherwise()))
        .mapToDouble(other -> Neighbours.distance(row, other))
        .reduce(Neighbours.distance(row, check.otherwise()), Math::min);
  }

  private static Check.Outcome shows(Check check, Cause cause) {
    double[] row = check.likelihood().get(cause.id());
    return IntStream.range(0, row.length)
        .boxed()
        .max(Comparator.comparingDouble(o -> row[o] - check.otherwise()[o]))
        .map(check.outcomes()::get)
        .orElseThrow();
  }
}
