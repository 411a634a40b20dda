package yett.interview.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.knowledge.RuleBase;
import yett.plan.Planner;

/**
 * Orders the set-ups in which an inspection is made so that entering and leaving them takes the
 * least time; among equal orders, the one whose places come first on the walk. Proofs come after
 * all work inside the operator, and a new gate is not run before everything was seen and measured
 * that can be while it stands.
 */
final class InspectionOrder {
  /** Most stages that are ordered together; later ones on the walk wait. The cards have nine. */
  private static final int MOST = 14;

  private final RuleBase base;
  private final Planner planner;
  private final List<Stage> stages;
  private final Map<Map.Entry<Set<String>, Integer>, Double> known = new HashMap<>();

  /**
   * The set-ups that some checks need together.
   *
   * @param rank all stages of a lower rank come before this one
   */
  record Stage(List<String> needs, int rank) {}

  /**
   * @param stages in walking order
   */
  InspectionOrder(RuleBase base, Planner planner, List<Stage> stages) {
    this.base = base;
    this.planner = planner;
    this.stages = stages;
  }

  /**
   * The position of the next stage. What can be done as the gate stands comes first: it costs no
   * time, and nobody opens an operator that they have not looked at.
   *
   * @param inForce ids of the set-ups in force
   */
  int next(Set<String> inForce) {
    int all = (1 << Math.min(MOST, stages.size())) - 1;
    List<Integer> open = open(all);
    return open.stream()
        .filter(s -> isReady(inForce, stages.get(s)))
        .findFirst()
        .orElseGet(
            () ->
                open.stream()
                    .min(Comparator.comparingDouble(s -> through(inForce, all, s)))
                    .orElseThrow());
  }

  private boolean isReady(Set<String> inForce, Stage stage) {
    Planner.Change change = planner.change(inForce, stage.needs());
    return change.enter().isEmpty() && change.leave().isEmpty();
  }

  private List<Integer> open(int left) {
    List<Integer> open = new ArrayList<>();
    int lowest = Integer.MAX_VALUE;
    for (int s = 0; s < Math.min(MOST, stages.size()); s++) {
      if ((left & 1 << s) != 0) {
        lowest = Math.min(lowest, stages.get(s).rank());
      }
    }
    for (int s = 0; s < Math.min(MOST, stages.size()); s++) {
      if ((left & 1 << s) != 0 && stages.get(s).rank() == lowest) {
        open.add(s);
      }
    }
    return open;
  }

  private double through(Set<String> inForce, int left, int stage) {
    Planner.Change change = planner.change(inForce, stages.get(stage).needs());
    Set<String> then = new LinkedHashSet<>(inForce);
    double minutes = 0;
    for (String leave : change.leave()) {
      then.remove(leave);
      minutes += base.setUps().get(leave).leaveMinutes();
    }
    for (String enter : change.enter()) {
      then.add(enter);
      minutes += base.setUps().get(enter).enterMinutes();
    }
    return minutes + best(then, left & ~(1 << stage));
  }

  /** Least minutes of set-ups from here until all stages are done and all set-ups left. */
  private double best(Set<String> inForce, int left) {
    if (left == 0) {
      return inForce.stream().mapToDouble(s -> base.setUps().get(s).leaveMinutes()).sum();
    }
    Map.Entry<Set<String>, Integer> key = Map.entry(Set.copyOf(inForce), left);
    Double before = known.get(key);
    if (before == null) {
      before = open(left).stream().mapToDouble(s -> through(inForce, left, s)).min().orElse(0);
      known.put(key, before);
    }
    return before;
  }
}
