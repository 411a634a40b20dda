package yett.dispatch;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What to put in the van: how often each part is needed, and the few that are nearly enough. */
final class Van {
  private final List<Scenario> scenarios;
  private final double known;

  Van(List<Scenario> scenarios) {
    this.scenarios = scenarios;
    this.known = scenarios.stream().filter(Scenario::known).mapToDouble(Scenario::chance).sum();
  }

  /** Every part with the chance that it is needed, the most probable first. */
  List<DispatchSheet.Item> parts() {
    Map<String, Double> chances = new HashMap<>();
    for (Scenario scenario : scenarios) {
      scenario.parts().forEach(p -> chances.merge(p, scenario.chance(), Double::sum));
    }
    return sorted(chances);
  }

  static List<DispatchSheet.Item> sorted(Map<String, Double> chances) {
    return chances.entrySet().stream()
        .map(e -> new DispatchSheet.Item(e.getKey(), Math.min(1, e.getValue())))
        .sorted(
            Comparator.comparingDouble((DispatchSheet.Item i) -> -i.chance())
                .thenComparing(DispatchSheet.Item::name))
        .toList();
  }

  /**
   * Few parts that are enough with at least this chance, if it is something that the rule base
   * knows: the set of parts that gains most for each part comes first; what turns out to be
   * needless is taken out again.
   */
  DispatchSheet.Cover cover(double enough) {
    Set<String> van = new TreeSet<>();
    while (covered(van) < enough) {
      Set<String> best = best(van);
      if (best.isEmpty()) {
        break;
      }
      van.addAll(best);
    }
    for (String part : List.copyOf(van)) {
      van.remove(part);
      if (covered(van) < enough) {
        van.add(part);
      }
    }
    return new DispatchSheet.Cover(List.copyOf(van), covered(van), Math.max(0, 1 - known));
  }

  private Set<String> best(Set<String> van) {
    Set<String> best = Set.of();
    double most = 0;
    double now = covered(van);
    Set<Set<String>> tried = new HashSet<>();
    for (Scenario scenario : scenarios) {
      Set<String> more = scenario.parts();
      more.removeAll(van);
      if (scenario.known() && !more.isEmpty() && tried.add(more)) {
        Set<String> then = new HashSet<>(van);
        then.addAll(more);
        double gain = (covered(then) - now) / more.size();
        if (gain > most) {
          most = gain;
          best = more;
        }
      }
    }
    return best;
  }

  private double covered(Set<String> van) {
    double covered =
        scenarios.stream()
            .filter(s -> s.known() && van.containsAll(s.parts()))
            .mapToDouble(Scenario::chance)
            .sum();
    return known > 0 ? Math.min(1, covered / known) : 1;
  }
}
