package yett.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.quantity.Units;

/**
 * Work that removes causes.
 *
 * @param removes cause to the chance that the repair removes it, if it is present
 * @param entails repairs or checks that are necessary afterwards
 * @param measureFirst checks to make before it is begun, where possible
 * @param proofs proofs that it makes necessary in addition to those of every gate
 * @param putsRight proofs whose failure it puts right by itself, whatever the cause
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
    List<String> putsRight,
    Map<String, List<String>> onlyIf,
    String source)
    implements SiteCard {

  /**
   * A part by its trade description, with the trainer's price.
   *
   * @param size what decides the right size: the id of a site question, or the words to ask for;
   *     empty if there is one size
   */
  public record Part(String part, double price, String size) {}

  /** Whether it is for a gate on which nothing is broken, and changes nothing on the machine. */
  public boolean leavesTheMachine() {
    return removes.containsKey(Cause.NOTHING_WRONG)
        || removes.keySet().equals(Set.of(Cause.HELD_ON_PURPOSE));
  }

  /** A copy that removes other causes. */
  public Repair withRemoves(Map<String, Double> causes) {
    return copy(name, steps, causes, who);
  }

  /** A copy for another least qualified person. */
  Repair withWho(Role other) {
    return other == who ? this : copy(name, steps, removes, other);
  }

  /** A copy with texts in these units. */
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
        putsRight,
        onlyIf,
        source);
  }

  /** The price of all parts. */
  public double price() {
    return parts.stream().mapToDouble(Part::price).sum();
  }
}
