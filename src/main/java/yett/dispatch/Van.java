package yett.dispatch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.dispatch.DispatchSheet.Cover;
import yett.dispatch.DispatchSheet.Item;
import yett.dispatch.DispatchSheet.Packed;
import yett.knowledge.Repair;

/**
 * Decides what to put in the van: computes how often each part is needed, and finds a small set
 * that is nearly always enough.
 */
final class Van {
  private final Map<String, Double> chances = new HashMap<>();
  private final Map<String, Double> prices = new HashMap<>();

  /**
   * The parts that a scenario needs, with its chance; only scenarios whose causes are in the rule
   * base.
   */
  private final Map<Set<String>, Double> ways = new LinkedHashMap<>();

  private final double known;

  Van(List<Scenario> scenarios) {
    for (Scenario scenario : scenarios) {
      Set<String> parts = scenario.parts();
      parts.forEach(p -> chances.merge(p, scenario.chance(), Double::sum));
      if (scenario.known()) {
        ways.merge(parts, scenario.chance(), Double::sum);
      }
      for (Repair repair : scenario.repairs()) {
        repair.parts().forEach(p -> prices.merge(p.part(), p.price(), Math::max));
      }
    }
    this.known = ways.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** Every part with the chance that it is needed, the most probable first. */
  List<Item> parts() {
    return sorted(chances);
  }

  static List<Item> sorted(Map<String, Double> chances) {
    return chances.entrySet().stream()
        .map(e -> new Item(e.getKey(), Math.min(1, e.getValue())))
        .sorted(Comparator.comparingDouble((Item i) -> -i.chance()).thenComparing(Item::name))
        .toList();
  }

  /**
   * A small set of parts that is enough with at least this chance, given that the cause is in the
   * rule base. The set is filled greedily, with the largest gain for each part first; parts that
   * turn out not to be needed are then removed.
   */
  Cover cover(double enough) {
    Set<String> van = loaded(chances.keySet(), enough);
    for (String part : List.copyOf(van)) {
      van.remove(part);
      if (covered(van) < enough) {
        van.add(part);
      }
    }
    List<Packed> packed = new ArrayList<>();
    Set<String> soFar = new HashSet<>();
    for (String part : loaded(van, 1)) {
      soFar.add(part);
      packed.add(
          new Packed(part, Math.min(1, chances.get(part)), prices.get(part), covered(soFar)));
    }
    List<Item> left = parts().stream().filter(i -> !soFar.contains(i.name())).toList();
    return new Cover(
        packed, covered(Set.of()), covered(soFar), left, Math.min(1, Math.max(0, 1 - known)));
  }

  /** Adds parts by their gain until they are enough, or until nothing adds to it. */
  private Set<String> loaded(Set<String> allowed, double enough) {
    Set<String> van = new LinkedHashSet<>();
    while (covered(van) < enough) {
      Set<String> best = best(van, allowed);
      if (best.isEmpty()) {
        break;
      }
      best.stream()
          .sorted(Comparator.comparingDouble((String p) -> -chances.get(p)).thenComparing(p -> p))
          .forEach(van::add);
    }
    return van;
  }

  private Set<String> best(Set<String> van, Set<String> allowed) {
    Set<String> best = Set.of();
    double most = 0;
    for (Set<String> way : ways.keySet()) {
      Set<String> more = new HashSet<>(way);
      more.removeAll(van);
      if (!more.isEmpty() && allowed.containsAll(more)) {
        double gain = gain(van, more) / more.size();
        if (gain > most) {
          most = gain;
          best = more;
        }
      }
    }
    return best;
  }

  private double gain(Set<String> van, Set<String> more) {
    Set<String> then = new HashSet<>(van);
    then.addAll(more);
    return covered(then) - covered(van);
  }

  private double covered(Set<String> van) {
    double covered =
        ways.entrySet().stream()
            .filter(w -> van.containsAll(w.getKey()))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    return known > 0 ? Math.min(1, covered / known) : 1;
  }
}
