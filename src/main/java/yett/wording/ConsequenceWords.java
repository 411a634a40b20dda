package yett.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.interview.moment.Moment;
import yett.knowledge.Cause;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/** Says which faults a fault has brought about, next to the repair of either. */
public final class ConsequenceWords {
  /** If both causes are more likely than not, both count as present. */
  private static final double LIKELY = 0.5;

  private final RuleBase base;
  private final Moment moment;
  private final double[] left;

  public ConsequenceWords(RuleBase base, Moment moment) {
    this.base = base;
    this.moment = moment;
    this.left = moment.belief().remaining();
  }

  /**
   * What has to be repaired afterwards, because this fault brought it about, and which causes have
   * to be repaired too, because they brought this one about.
   */
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
