package yett.bench;

import java.util.List;
import java.util.Locale;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Tells the author of a new cause whether a check tells it from others, and from which. */
final class CauseAdvice {
  /** Two causes look alike if no check separates them by at least this much (total variation). */
  private static final double TOLD_APART = 0.35;

  private static final String UNSAID =
      " You said nothing about that, so it counts as on a sound gate; if that is wrong,"
          + " give it a row.";

  private CauseAdvice() {}

  static List<String> on(String cause, List<String> like, RuleBase base) {
    List<Check> checks = ToldApart.checks(base);
    if (checks.stream().noneMatch(c -> c.likelihood().containsKey(cause))) {
      return List.of("No check finds " + cause + " yet. Write one that does: knowledge new check.");
    }
    return like.stream()
        .map(other -> from(other, ToldApart.best(checks, cause, other), cause))
        .toList();
  }

  private static String from(String other, ToldApart best, String cause) {
    return best.distance() < TOLD_APART
        ? "No check tells it well apart from " + other + ". A check of its own would."
        : String.format(
            Locale.ROOT,
            "Best told apart from %s by %s (%.0f %%).%s",
            other,
            best.check().id(),
            100 * best.distance(),
            best.check().likelihood().containsKey(cause) ? "" : UNSAID);
  }
}
