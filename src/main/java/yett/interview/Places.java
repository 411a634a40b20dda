package yett.interview;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.knowledge.RuleBase;

/**
 * Where causes stand in a ranking: by their chance, but what was probably brought about by another
 * cause stands behind that one, and behind whatever brought that one about.
 */
final class Places {
  private final RuleBase base;
  private final List<String> causes;
  private final double[] chances;
  private final double[] roots;
  private final Map<String, Double> places = new HashMap<>();

  /**
   * @param chances that each cause was there
   * @param roots that it was there and nothing else had brought it about
   */
  Places(RuleBase base, List<String> causes, double[] chances, double[] roots) {
    this.base = base;
    this.causes = causes;
    this.chances = chances;
    this.roots = roots;
  }

  /** The chance by which the cause is ranked: the least of its own and those it stands behind. */
  double of(String cause) {
    Double known = places.get(cause);
    if (known == null) {
      double own = chances[causes.indexOf(cause)];
      known = origin(cause).map(o -> Math.min(own, of(o))).orElse(own);
      places.put(cause, known);
    }
    return known;
  }

  /** How many causes it stands behind. */
  int behind(String cause) {
    return origin(cause).map(o -> 1 + behind(o)).orElse(0);
  }

  /** The most probable cause of a cause that probably did not come by itself. */
  private Optional<String> origin(String cause) {
    int i = causes.indexOf(cause);
    if (roots[i] >= chances[i] / 2) {
      return Optional.empty();
    }
    return causes.stream()
        .filter(c -> base.causes().get(c).consequences().containsKey(cause))
        .max(Comparator.comparingDouble(c -> chances[causes.indexOf(c)]));
  }
}
