package yett.knowledge;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Gives a repair from an add-on the proofs that every repair of the rule base for the same cause
 * asks for. Otherwise an added repair that comes first could bypass these proofs.
 */
final class AddedRepairs {
  private final RuleBase base;
  private final RuleBaseReader.Places places;
  private final Set<String> added = new HashSet<>();

  AddedRepairs(RuleBase base, RuleBaseReader.Places places) {
    this.base = base;
    this.places = places;
    base.addOns().forEach(a -> added.addAll(a.adds()));
  }

  void check() {
    base.repairs().values().stream().filter(this::isAdded).forEach(this::check);
  }

  private boolean isAdded(Repair repair) {
    return added.contains("repair " + repair.id());
  }

  private void check(Repair repair) {
    Set<String> missing = new HashSet<>();
    repair.removes().keySet().forEach(cause -> missing.addAll(proofsAfter(cause)));
    missing.removeAll(repair.proofs());
    if (!missing.isEmpty()) {
      places
          .of("repair", repair.id())
          .problem(
              "proofs",
              "less-safe",
              "\"" + repair.id() + "\" lacks the proofs " + String.join(", ", sorted(missing)),
              "Every repair of the rule base for the same fault asks for them.");
    } else if (repair.proofs().isEmpty() && !base.proofs().isEmpty()) {
      places
          .of("repair", repair.id())
          .problem(
              "",
              "less-safe",
              "\"" + repair.id() + "\" asks for no proof",
              "Name the proofs after which the gate may go back to service.");
    }
  }

  private static List<String> sorted(Set<String> proofs) {
    return proofs.stream().sorted().toList();
  }

  /** The proofs that every repair of the rule base for a cause asks for. */
  private Set<String> proofsAfter(String cause) {
    return base.repairs().values().stream()
        .filter(r -> !isAdded(r) && r.removes().containsKey(cause))
        .<Set<String>>map(r -> new HashSet<>(r.proofs()))
        .reduce(
            (some, others) -> {
              some.retainAll(others);
              return some;
            })
        .orElse(Set.of());
  }
}
