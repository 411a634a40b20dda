package yett.saying;

import java.util.List;

/**
 * What was probably meant, the most probable first.
 *
 * @param dangers to be asked about before anything else
 * @param findings everything else; first what fits each clause best
 * @param clauses how many of the findings fit a clause best
 */
public record Heard(List<Found> dangers, List<Found> findings, int clauses) {
  Heard(List<Found> dangers, List<Found> findings) {
    this(dangers, findings, 0);
  }

  /**
   * A possible meaning.
   *
   * @param weight how well it fits, 0 to 1; not a probability
   */
  public record Found(Thing thing, double weight) {}

  /**
   * The things that each fit a clause best, if all of them fit as well as this; empty if one does
   * not.
   */
  public List<Thing> clear(double weight) {
    List<Found> best = findings.subList(0, clauses);
    return best.stream().allMatch(f -> f.weight() >= weight)
        ? best.stream().map(Found::thing).toList()
        : List.of();
  }

  public List<Thing> dangerThings() {
    return dangers.stream().map(Found::thing).toList();
  }

  public List<Thing> things() {
    return findings.stream().map(Found::thing).toList();
  }
}
