package yett.command.diagnose;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.saying.Thing;

/** What a caller is told to watch for when the gate works again. */
final class WatchFor {
  /** A look that a cause shows on as often as this tells of it. */
  private static final double SHOWS = 0.5;

  private final Sitting sitting;

  WatchFor(Sitting sitting) {
    this.sitting = sitting;
  }

  /** What the cards have to be watched for after what did it, and what always has. */
  Set<String> after(String what) {
    Set<String> watch = new LinkedHashSet<>();
    List<Thing> heard = what.isBlank() ? List.of() : sitting.ears().tellings().hear(what).things();
    for (Repair repair : sitting.base().repairs().values()) {
      if (repair.who() == Role.CALLER && heard.stream().anyMatch(t -> isFor(repair, t))) {
        watch.addAll(sitting.base().telephone().watch().getOrDefault(repair.id(), List.of()));
      }
    }
    watch.add("Watch the next runs from the side, with nobody in the opening.");
    watch.add("If it does it again, do not put it right a second time: write down when, and call.");
    watch.add("Call at once if anything is new: a noise, a smell, a gate that does not stop.");
    return watch;
  }

  /** Whether what was heard shows a cause that the repair removes. */
  private boolean isFor(Repair repair, Thing thing) {
    Check check = sitting.base().checks().get(thing.card());
    if (check == null || thing.outcome().isEmpty() || check.id().equals(CallEnd.CHECK)) {
      return false;
    }
    int at = check.indexOf(thing.outcome());
    return at > 0
        && repair.removes().keySet().stream()
            .map(check.likelihood()::get)
            .anyMatch(row -> row != null && row[at] >= SHOWS);
  }
}
