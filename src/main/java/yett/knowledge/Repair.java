package yett.knowledge;

import java.util.List;
import java.util.Map;
import yett.quantity.Units;

/**
 * An action that removes causes.
 *
 * @param removes cause to the chance that the repair removes it, if it is there
 * @param entails repairs or checks that are necessary afterwards
 * @param measureFirst checks whose answer is wanted before it is begun, where they can be made
 * @param proofs proofs it makes necessary besides those that every gate needs
 */
public record Repair(
    String id,
    String name,
    List<String> steps,
    Map<String, Double> removes,
    double minutes,
    List<Part> parts,
    List<String> needs,
    Role who,
    List<String> hazards,
    List<String> measureFirst,
    List<String> entails,
    List<String> proofs,
    Map<String, List<String>> onlyIf,
    String source)
    implements SiteCard {

  /**
   * A part by its trade description, with the trainer's price.
   *
   * @param size what has to be known to bring the right one: the id of a site question, or words to
   *     ask for; empty if it comes in one size
   */
  public record Part(String part, double price, String size) {}

  /** The same repair, removing other causes. */
  public Repair withRemoves(Map<String, Double> causes) {
    return copy(name, steps, causes, who);
  }

  /** The same repair by another person. */
  Repair withWho(Role other) {
    return other == who ? this : copy(name, steps, removes, other);
  }

  /** The same repair for somebody who works in other units. */
  Repair in(Units units) {
    return copy(units.in(name), units.in(steps), removes, who);
  }

  private Repair copy(
      String itsName, List<String> itsSteps, Map<String, Double> causes, Role person) {
    return new Repair(
        id,
        itsName,
        itsSteps,
        causes,
        minutes,
        parts,
        needs,
        person,
        hazards,
        measureFirst,
        entails,
        proofs,
        onlyIf,
        source);
  }

  /** Price of all parts. */
  public double price() {
    return parts.stream().mapToDouble(Part::price).sum();
  }
}
