package yett.bench;

import java.util.List;
import java.util.stream.Stream;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;

/**
 * What a look at a rule base found.
 *
 * @param base as far as it can be read
 * @param problems of cards, rules' names and cases, by file and line
 * @param cases how many sound cases stand beside the cards
 */
public record Checked(RuleBase base, List<Problem> problems, int cases) {

  /** What is not wrong and yet worth a second look, in sentences. */
  public List<String> remarks() {
    return CardAnomalies.unproved(base).stream()
        .map(a -> "Repair " + a.about() + ": " + a.message() + ".")
        .toList();
  }

  /** With problems of files that were not even read, before the others. */
  public Checked with(List<Problem> refused) {
    return new Checked(base, Stream.concat(refused.stream(), problems.stream()).toList(), cases);
  }
}
