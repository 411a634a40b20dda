package yett.interview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Check;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.plan.Telling;

/**
 * What is still asked before a gate is handed over for want of anything worth its cost. The plan
 * looks a few steps ahead; where many causes are left, it takes more answers than that until a
 * repair is in sight, and no single one of them seems to pay. Whoever comes next would begin with
 * the same checks.
 */
final class LastLooks {
  /** A check that tells less about what is wrong, in bits, is not worth the way. */
  private static final double LEAST_BITS = 0.08;

  /** From this chance on a suspicion is what is handed over, and no riddle any more. */
  private static final double LIKELY = 0.5;

  private final Present present;
  private final Planner planner;

  LastLooks(Present present, Planner planner) {
    this.present = present;
    this.planner = planner;
  }

  /** The check that tells most for its minutes; empty if none tells enough. */
  Optional<Advice> advice(Set<String> open) {
    if (Suspect.left(present, Set.of()).stream().anyMatch(s -> s.chance() >= LIKELY)) {
      return Optional.empty();
    }
    Map<String, Double> worth = new HashMap<>();
    List<Advice.Candidate> candidates = new ArrayList<>();
    for (Telling.Told told : Telling.of(present.belief, open)) {
      if (told.bits() >= LEAST_BITS) {
        double minutes = minutes(present.base.checks().get(told.check()));
        worth.put(told.check(), told.bits() / minutes);
        candidates.add(new Advice.Candidate(told.check(), minutes, 0));
      }
    }
    candidates.sort(
        Comparator.comparingDouble((Advice.Candidate c) -> -worth.get(c.check()))
            .thenComparing(Advice.Candidate::check));
    return candidates.isEmpty()
        ? Optional.empty()
        : Optional.of(new Advice(Advice.Kind.ASK, List.copyOf(candidates), List.of(), 0, 0, true));
  }

  private double minutes(Check check) {
    return present.base.planning().question()
        + check.minutes()
        + planner.changeOfSetUp(present.state.work().setUps(), check.needs());
  }
}
