package yett.saying;

import java.util.List;

/**
 * What was probably meant, the most probable first.
 *
 * @param dangers to be asked about before anything else
 * @param findings everything else; first what fits each clause best
 */
public record Heard(List<Found> dangers, List<Found> findings) {

  /**
   * A possible meaning.
   *
   * @param weight how well it fits, 0 to 1; not a probability
   */
  public record Found(Thing thing, double weight) {}

  public List<Thing> dangerThings() {
    return dangers.stream().map(Found::thing).toList();
  }

  public List<Thing> things() {
    return findings.stream().map(Found::thing).toList();
  }
}
