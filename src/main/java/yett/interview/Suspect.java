package yett.interview;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import yett.knowledge.Cause;
import yett.knowledge.Repair;

/**
 * A cause that may still be present, with what this person could do about it. "Nothing is wrong
 * with the machine" can be one: then that is explained, the gate proved and left.
 *
 * @param chance that it is present now
 * @param repair the open repair that removes it most surely; empty if none is open
 */
public record Suspect(Cause cause, double chance, Optional<Repair> repair) {
  private static final int MOST = 3;

  /** Least chance of a suspect. */
  private static final double LEAST = 0.03;

  private static final double TO_FIT = 0.1;

  /**
   * The causes that may still be present, the likeliest first.
   *
   * @param open ids of the repairs that this person can do
   */
  static List<Suspect> left(Present present, Set<String> open) {
    double[] there = present.remaining();
    List<String> causes = present.belief().model().causes();
    List<Suspect> left = new ArrayList<>();
    IntStream.range(0, there.length)
        .filter(c -> there[c] >= LEAST && !causes.get(c).equals(Cause.NOT_IN_RULE_BASE))
        .mapToObj(
            c ->
                new Suspect(
                    present.base.causes().get(causes.get(c)),
                    there[c],
                    repair(present, causes.get(c), open)))
        .sorted(Comparator.comparingDouble(s -> -s.chance()))
        .limit(MOST)
        .forEach(left::add);
    return List.copyOf(left);
  }

  /**
   * Whether this person may try the repair without knowing more. A part is fitted only if the cause
   * has a chance of at least one in ten: a needless part costs money, disturbs what is sound, and
   * hides what was wrong.
   */
  public boolean worthTrying() {
    return repair.isPresent() && (repair.get().parts().isEmpty() || chance >= TO_FIT);
  }

  private static Optional<Repair> repair(Present present, String cause, Set<String> open) {
    return present.base.removing(cause).stream().filter(r -> open.contains(r.id())).findFirst();
  }
}
