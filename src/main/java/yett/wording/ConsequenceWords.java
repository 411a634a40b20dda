package yett.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.interview.Moment;
import yett.knowledge.Cause;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/** What a fault has brought about, said with the repair of either. */
public final class ConsequenceWords {
  /** More likely than not, both are there. */
  private static final double LIKELY = 0.5;

  private final RuleBase base;
  private final Moment moment;
  private final double[] left;

  public ConsequenceWords(RuleBase base, Moment moment) {
    this.base = base;
    this.moment = moment;
    this.left = moment.belief().remaining();
  }

  /** What comes after a repair, because its fault brought it about, or what has to come first. */
  public Optional<String> of(Repair repair) {
    Optional<Cause> mended =
        repair.removes().keySet().stream()
            .filter(base.causes()::containsKey)
            .max(Comparator.comparingDouble(this::chance).thenComparing(c -> c))
            .filter(c -> chance(c) >= LIKELY)
            .map(base.causes()::get);
    return mended.flatMap(cause -> words(cause, repair));
  }

  private Optional<String> words(Cause cause, Repair repair) {
    List<String> sentences = new ArrayList<>();
    List<Cause> from =
        cause.consequences().keySet().stream()
            .filter(c -> chance(c) >= LIKELY && !repair.removes().containsKey(c))
            .sorted()
            .map(base.causes()::get)
            .toList();
    if (!from.isEmpty()) {
      sentences.add(
          names(from)
              + (from.size() == 1 ? " is a consequence and is" : " are consequences and are")
              + " put right after it.");
    }
    List<Cause> roots =
        base.causes().values().stream()
            .filter(c -> c.consequences().containsKey(cause.id()) && chance(c.id()) >= LIKELY)
            .filter(c -> !repair.removes().containsKey(c.id()))
            .toList();
    if (!roots.isEmpty()) {
      sentences.add(
          "Caused by: " + names(roots) + ". Unless that is repaired too, the fault comes back.");
    }
    return sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences));
  }

  private static String names(List<Cause> causes) {
    return causes.stream().map(Cause::name).collect(Collectors.joining("; "));
  }

  private double chance(String cause) {
    return left[moment.belief().model().indexOf(cause)];
  }
}
