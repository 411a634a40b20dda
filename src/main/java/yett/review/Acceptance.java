package yett.review;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import yett.knowledge.CardEdit;
import yett.knowledge.RuleBase;

/**
 * The files of a rule base after accepting proposals.
 *
 * @param files contents by path, changed and unchanged
 * @param changed paths of the changed files
 * @param base read from the files
 * @param left proposals that could not be written because no place was found
 */
public record Acceptance(
    SortedMap<String, String> files, List<String> changed, RuleBase base, List<Proposal> left) {
  private static final double SAME = 1e-9;

  /**
   * Works out the changes; nothing is written to disk.
   *
   * @param mine which of the paths may be written to
   * @throws IllegalStateException if a card, read again, would not have the accepted chances
   */
  public static Acceptance of(
      SortedMap<String, String> files, List<Proposal> accepted, Predicate<String> mine) {
    CardEdit edit = new CardEdit(files, mine);
    TreeSet<String> changed = new TreeSet<>();
    List<Proposal> left =
        accepted.stream()
            .filter(
                p -> {
                  Optional<String> file = write(edit, p);
                  file.ifPresent(changed::add);
                  return file.isEmpty();
                })
            .toList();
    RuleBase base = RuleBase.read(edit::files);
    accepted.stream().filter(p -> !left.contains(p)).forEach(p -> says(base, p));
    return new Acceptance(edit.files(), List.copyOf(changed), base, left);
  }

  private static Optional<String> write(CardEdit edit, Proposal p) {
    return switch (p.kind()) {
      case PRIOR -> edit.prior(p.cause(), p.instead()[0]);
      case OTHERWISE -> edit.otherwise(p.check(), p.outcomes(), p.instead());
      case ROW -> edit.row(p.check(), p.cause(), p.outcomes(), p.instead());
    };
  }

  private static void says(RuleBase base, Proposal p) {
    double[] now =
        switch (p.kind()) {
          case PRIOR -> new double[] {base.causes().get(p.cause()).prior()};
          case OTHERWISE -> base.checks().get(p.check()).otherwise();
          case ROW -> base.checks().get(p.check()).likelihood().get(p.cause());
        };
    for (int i = 0; i < p.instead().length; i++) {
      // A complaint has one figure to write, while its row on the card has two.
      int at = now.length - p.instead().length + i;
      if (Math.abs(now[at] - p.instead()[i]) > SAME) {
        throw new IllegalStateException(
            "\"" + p.name() + "\" would not read as it was accepted; nothing was written");
      }
    }
  }
}
