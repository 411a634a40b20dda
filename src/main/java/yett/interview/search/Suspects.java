package yett.interview.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import yett.interview.moment.Present;
import yett.interview.step.Suspect;
import yett.knowledge.Cause;
import yett.knowledge.Repair;

/** The suspects of a case, as far as this person can see to them. */
final class Suspects {
  private static final int MOST = 3;

  /** Least chance of a suspect. */
  private static final double LEAST = 0.03;

  private Suspects() {}

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
                    present.base().causes().get(causes.get(c)),
                    there[c],
                    repair(present, causes.get(c), open)))
        .sorted(Comparator.comparingDouble(s -> -s.chance()))
        .limit(MOST)
        .forEach(left::add);
    return List.copyOf(left);
  }

  private static Optional<Repair> repair(Present present, String cause, Set<String> open) {
    return present.base().removing(cause).stream().filter(r -> open.contains(r.id())).findFirst();
  }
}
