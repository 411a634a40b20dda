package yett.dispatch;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Repair;

/**
 * One way in which the visit may go.
 *
 * @param chance of it
 * @param known whether all that is wrong in it is in the rule base
 * @param repairs all that are done in it, without success or not
 */
record Scenario(double chance, boolean known, Set<Repair> repairs) {

  Set<String> parts() {
    return repairs.stream()
        .flatMap(r -> r.parts().stream())
        .map(Repair.Part::part)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The same when this is done as well. */
  Scenario and(double chance, boolean known, Set<Repair> more) {
    Set<Repair> all =
        Stream.concat(repairs.stream(), more.stream()).collect(Collectors.toUnmodifiableSet());
    return new Scenario(this.chance * chance, this.known && known, all);
  }
}
