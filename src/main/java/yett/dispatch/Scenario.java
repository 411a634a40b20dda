package yett.dispatch;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Repair;

/**
 * One way in which the visit may go.
 *
 * @param chance of this scenario
 * @param known whether all its causes are in the rule base
 * @param repairs all that are done in it, successful or not
 */
record Scenario(double chance, boolean known, Set<Repair> repairs) {

  Set<String> parts() {
    return repairs.stream()
        .flatMap(r -> r.parts().stream())
        .map(Repair.Part::part)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** This scenario extended by further repairs. */
  Scenario and(double chance, boolean known, Set<Repair> more) {
    Set<Repair> all =
        Stream.concat(repairs.stream(), more.stream()).collect(Collectors.toUnmodifiableSet());
    return new Scenario(this.chance * chance, this.known && known, all);
  }
}
