package yett.interview.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import yett.belief.Belief;
import yett.interview.search.Adviser;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.testing.Advices;

/**
 * Advises anything that may be done, with no regard to sense or cost; always the same in the same
 * state. What is safe must be safe whatever the plan chooses.
 *
 * @param first checks that it advises before all else, the first of them that may be made
 */
public record AnyAdviser(long seed, List<String> first) implements Adviser {
  /** How seldom it has enough: once in so many pieces of advice. */
  private static final int PATIENCE = 15;

  /** Prefers no check to another. */
  public AnyAdviser(long seed) {
    this(seed, List.of());
  }

  @Override
  public Advice advise(Belief belief, Planner.Options options) {
    Random random = new Random(31 * seed + options.hashCode());
    random.nextInt();
    List<String> repairs = new ArrayList<>(options.repairs());
    List<String> checks = new ArrayList<>(options.checks());
    Optional<String> wanted = first.stream().filter(checks::contains).findFirst();
    if (wanted.isPresent()) {
      return Advices.asking(wanted.get());
    }
    boolean enough = random.nextInt(options.cured() ? 3 : PATIENCE) == 0;
    if (enough || repairs.isEmpty() && checks.isEmpty()) {
      return Advices.nothing();
    }
    boolean repair = checks.isEmpty() || !repairs.isEmpty() && random.nextInt(4) == 0;
    if (repair) {
      return Advices.repairing(repairs.get(random.nextInt(repairs.size())));
    }
    return Advices.asking(checks.get(random.nextInt(checks.size())));
  }
}
