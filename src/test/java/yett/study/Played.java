package yett.study;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What became of one simulated fault under one policy.
 *
 * @param minutes of work by the cards, proofs left out
 * @param parts price of the parts of all repairs done
 * @param checks how many were made
 * @param repairs how many were done, work that a repair entails left out
 * @param needless how many of those removed nothing that was there
 * @param needlessParts price of their parts
 * @param cured whether nothing was left wrong at the end
 * @param handedOver whether the case ended uncured in somebody else's hands
 * @param left whether it was closed as running with something still wrong
 * @param why it was handed over, in the interview's words; empty if it was not
 * @param checksFirst how many checks were made before the first repair, or at all without one
 * @param first what was believed when the first repair was proposed; empty if none was
 * @param last the same at the first repair, or at the end without one
 * @param end the same when the case closed
 */
record Played(
    Set<String> truth,
    double minutes,
    double parts,
    int checks,
    int repairs,
    int needless,
    double needlessParts,
    boolean cured,
    boolean handedOver,
    boolean left,
    String why,
    int checksFirst,
    Optional<Belief> first,
    Belief last,
    Belief end) {

  /**
   * The chances of all causes, in the order of the model, and the causes ranked by them.
   *
   * @param repairRight whether the repair then chosen removes something that was there
   */
  record Belief(List<String> ranked, List<Double> chances, boolean repairRight) {}

  /** Minutes with what comes after: a return visit, or somebody else's hour. */
  double charged(double callBack, double handOver) {
    return minutes + (left ? callBack : 0) + (handedOver ? handOver : 0);
  }
}
