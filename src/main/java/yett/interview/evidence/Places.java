package yett.interview.evidence;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.RuleBase;

/**
 * Where causes stand in a ranking: by their chance, but what was probably brought about by another
 * cause stands behind that one, and behind whatever brought that one about.
 */
public final class Places {
  private final Map<String, Double> chances = new HashMap<>();

  /** By cause that probably did not come by itself, the most probable cause of it. */
  private final Map<String, String> origins = new HashMap<>();

  /**
   * @param chances that each cause was there
   * @param roots that it was there and nothing else had brought it about
   */
  public Places(RuleBase base, List<String> causes, double[] chances, double[] roots) {
    for (int i = 0; i < chances.length; i++) {
      this.chances.put(causes.get(i), chances[i]);
    }
    for (int i = 0; i < chances.length; i++) {
      String cause = causes.get(i);
      if (roots[i] < chances[i] / 2) {
        causes.stream()
            .filter(c -> base.causes().get(c).consequences().containsKey(cause))
            .max(Comparator.comparingDouble(this.chances::get))
            .ifPresent(origin -> origins.put(cause, origin));
      }
    }
  }

  /** The chance by which the cause is ranked: the least of its own and those it stands behind. */
  public double of(String cause) {
    String origin = origins.get(cause);
    return origin == null ? chances.get(cause) : Math.min(chances.get(cause), of(origin));
  }

  /** How many causes it stands behind. */
  public int behind(String cause) {
    String origin = origins.get(cause);
    return origin == null ? 0 : 1 + behind(origin);
  }
}
