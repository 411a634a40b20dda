package yett.study;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.knowledge.Planning;

/**
 * What became of one simulated fault under one policy.
 *
 * @param minutes of work by the cards, and those that each question takes; proofs left out
 * @param parts price of the parts of all repairs done
 * @param checks how many were made
 * @param repairs how many were done, work that a repair entails left out
 * @param needless how many of those removed nothing that was there
 * @param needlessParts price of their parts
 * @param fitted how many of the repairs fitted parts
 * @param needlessFitted how many of those removed nothing that was there
 * @param cured whether nothing was left wrong at the end
 * @param handedOver whether the case ended uncured in somebody else's hands
 * @param left whether it was closed as running with something still wrong
 * @param due minutes of the cheapest repairs of what was still wrong at the end; 0 for a fault that
 *     no card describes
 * @param dueParts price of their parts
 * @param why it was handed over, in the interview's words; empty if it was not
 * @param checksFirst how many checks were made before the first repair, or at all without one
 * @param readBefore how many of all checks had been read at the first inspection, if that is known
 * @param first what was believed when the first repair was proposed; empty if none was
 * @param last the same at the first repair, or at the end without one
 * @param end the same when the case closed
 * @param rest the same of the causes that are still there then
 */
record Played(
    Set<String> truth,
    double minutes,
    double parts,
    int checks,
    int repairs,
    int needless,
    double needlessParts,
    int fitted,
    int needlessFitted,
    boolean cured,
    boolean handedOver,
    boolean left,
    double due,
    double dueParts,
    String why,
    int checksFirst,
    int readBefore,
    Optional<Belief> first,
    Belief last,
    Belief end,
    Belief rest) {

  /**
   * The chances of all causes, in the order of the model, and the causes ranked by them.
   *
   * @param repairRight whether the repair then chosen removes something that was there
   */
  record Belief(List<String> ranked, List<Double> chances, boolean repairRight) {
    /** Rank of a cause, 0 for the first; after all others if the rule base does not have it. */
    int place(String cause) {
      int at = ranked.indexOf(cause);
      return at < 0 ? ranked.size() : at;
    }
  }

  /** Minutes with what comes after: a return visit, or somebody else's hours, and the repair. */
  double inAll(Planning planning) {
    double after = (left ? planning.callBack() : 0) + (handedOver ? planning.handOver() : 0);
    return minutes + due + after;
  }

  /** What that costs, in money. */
  double cost(Planning planning) {
    return planning.minute() * inAll(planning) + parts + dueParts;
  }

  /** Rank of the true cause that is ranked best before the first repair, 1 for the first. */
  int rank() {
    return 1 + truth.stream().mapToInt(last::place).min().orElseThrow();
  }
}
