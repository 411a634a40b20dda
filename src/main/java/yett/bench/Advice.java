package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** What the writer of a new cause ought to know next: whether a check tells it, and from what. */
final class Advice {
  /** Two causes that no check tells apart by more than this look alike (total variation). */
  private static final double TOLD_APART = 0.35;

  private Advice() {}

  static List<String> on(String cause, List<String> like, RuleBase base) {
    List<Check> checks = base.ordinaryChecks().filter(c -> !c.danger()).toList();
    if (checks.stream().noneMatch(c -> c.likelihood().containsKey(cause))) {
      return List.of("No check tells " + cause + " yet. Write one that does: knowledge new check.");
    }
    List<String> advice = new ArrayList<>();
    for (String other : like) {
      Map.Entry<String, Double> best =
          checks.stream()
              .map(c -> Map.entry(c.id(), Neighbours.distance(c, cause, other)))
              .max(Comparator.comparingDouble(Map.Entry::getValue))
              .orElseThrow();
      advice.add(
          best.getValue() < TOLD_APART
              ? "Nothing tells it well from " + other + ". A check of its own would."
              : String.format(
                  Locale.ROOT,
                  "Told from %s best by %s (%.0f %%).",
                  other,
                  best.getKey(),
                  100 * best.getValue()));
    }
    return advice;
  }
}
