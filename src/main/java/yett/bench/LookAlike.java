package yett.bench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yett.knowledge.Cause;
import yett.knowledge.RuleBase;

/**
 * A cause that shows much of what another one shows.
 *
 * @param share of what is seen that is the same
 * @param told the check that best tells the two apart, if there is any check
 */
record LookAlike(Cause cause, double share, Optional<ToldApart> told) {
  private static final int MOST = 5;

  /**
   * The look-alikes of a cause, the most alike first. Causes that have little in common with it are
   * left out.
   */
  static List<LookAlike> of(Cause cause, RuleBase base) {
    Likeness likeness = new Likeness(base);
    var checks = ToldApart.checks(base);
    return base.causes().values().stream()
        .filter(c -> !c.id().equals(cause.id()) && !c.id().equals(Cause.NOT_IN_RULE_BASE))
        .map(
            c ->
                new LookAlike(
                    c,
                    likeness.between(cause, c),
                    checks.isEmpty()
                        ? Optional.empty()
                        : Optional.of(ToldApart.best(checks, cause.id(), c.id()))))
        .filter(a -> a.share() >= Likeness.ALIKE)
        .sorted(
            Comparator.comparingDouble(LookAlike::share)
                .reversed()
                .thenComparing(a -> a.cause().id()))
        .limit(MOST)
        .toList();
  }
}
