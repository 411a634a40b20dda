package yett.dispatch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.belief.Belief;
import yett.belief.Support;
import yett.interview.site.Site;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/**
 * Lists all ways in which a visit may go: for each set of causes, the repairs that it takes. The
 * repairs of one cause are tried in the order of chance over cost (Kadane and Simon 1977) until one
 * removes it. A part is therefore needed as often as the turn comes to its repair.
 */
final class Scenarios {
  private static final double MASS = 0.995;
  private static final int MOST = 160;

  /**
   * Once the chance that a cause is still present is below this, the last repair tried counts as
   * successful.
   */
  private static final double RARE = 0.02;

  private final RuleBase base;
  private final Site site;
  private final Map<String, List<Scenario>> ways = new HashMap<>();

  /**
   * @param site the gate as it is installed
   */
  Scenarios(RuleBase base, Site site) {
    this.base = base;
    this.site = site;
  }

  List<Scenario> of(Belief belief) {
    Support support = belief.support(MASS, MOST);
    List<String> ids = belief.model().positions();
    double[] weights = support.weights();
    double sum = Arrays.stream(weights).sum();
    List<Scenario> all = new ArrayList<>();
    for (int h = 0; h < support.size(); h++) {
      List<Scenario> some = List.of(new Scenario(weights[h] / sum, true, Set.of()));
      for (int cause : support.causes(h)) {
        some = with(some, ways.computeIfAbsent(ids.get(cause), this::ways));
      }
      all.addAll(some);
    }
    return all;
  }

  private static List<Scenario> with(List<Scenario> some, List<Scenario> ways) {
    List<Scenario> all = new ArrayList<>();
    for (Scenario scenario : some) {
      ways.forEach(w -> all.add(scenario.and(w.chance(), w.known(), w.repairs())));
    }
    return all;
  }

  private List<Scenario> ways(String cause) {
    List<Repair> repairs =
        base.repairs().values().stream()
            .filter(r -> r.removes().getOrDefault(cause, 0.0) > 0 && site.allows(r))
            .sorted(
                Comparator.comparingDouble((Repair r) -> -r.removes().get(cause) / cost(r))
                    .thenComparing(Repair::id))
            .toList();
    if (repairs.isEmpty()) {
      return List.of(new Scenario(1, false, Set.of()));
    }
    List<Scenario> ways = new ArrayList<>();
    Set<Repair> done = new HashSet<>();
    double left = 1;
    for (Repair repair : repairs) {
      done.add(repair);
      double cures = left * repair.removes().get(cause);
      left -= cures;
      if (left < RARE) {
        ways.add(new Scenario(cures + left, true, Set.copyOf(done)));
        return ways;
      }
      ways.add(new Scenario(cures, true, Set.copyOf(done)));
    }
    ways.add(new Scenario(left, true, Set.copyOf(done)));
    return ways;
  }

  private double cost(Repair repair) {
    double setUps =
        repair.needs().stream()
            .map(base.setUps()::get)
            .mapToDouble(s -> s.enterMinutes() + s.leaveMinutes())
            .sum();
    return 1 + repair.minutes() + setUps + repair.price() / base.planning().minute();
  }
}
