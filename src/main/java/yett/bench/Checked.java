package yett.bench;

import java.util.List;
import java.util.stream.Stream;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * The result of checking a rule base.
 *
 * @param base as far as it can be read
 * @param problems of cards, rules' names and cases, by file and line
 * @param cases how many valid cases are next to the cards
 */
public record Checked(RuleBase base, List<Problem> problems, int cases) {

  /**
   * Remarks, in sentences, on what is not wrong but worth a second look. Nothing is said of cards
   * below an add-on: whoever writes it cannot change them.
   */
  public List<String> remarks() {
    Stream<String> unproved =
        CardAnomalies.unproved(base).stream()
            .filter(a -> base.isOwn("repair " + a.about()))
            .map(a -> "Repair " + a.about() + ": " + a.message() + ".");
    return Stream.of(StepsAtRisk.remarks(base).stream(), unproved, Priors.remarks(base).stream())
        .flatMap(remarks -> remarks)
        .toList();
  }

  /** The same with problems of files that could not be read, put before the others. */
  public Checked with(List<Problem> refused) {
    return new Checked(base, Stream.concat(refused.stream(), problems.stream()).toList(), cases);
  }
}
