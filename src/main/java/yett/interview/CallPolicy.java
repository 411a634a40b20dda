package yett.interview;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.knowledge.Pressing;
import yett.knowledge.Repair;

/** What is asked of a caller that nobody at the gate is asked. */
final class CallPolicy {
  /** Beyond so many questions a caller is not asked for the technician's sake. */
  private static final int MOST_FOR_A_VISIT = 7;

  private final Present present;
  private final SiteFacts sites;

  CallPolicy(Present present, SiteFacts sites) {
    this.present = present;
    this.sites = sites;
  }

  /** Depends on nothing but what was said, so that it can be asked at once. */
  List<Pressing> pressing() {
    List<String> said = present.state.told().complaints().orElse(List.of());
    return present.isCall()
        ? present.base.telephone().pressing().values().stream()
            .filter(p -> p.ifSaid().isEmpty() || p.ifSaid().stream().anyMatch(said::contains))
            .toList()
        : List.of();
  }

  /**
   * When nothing that a caller may do will help, a few more questions may still tell what to bring
   * and where to begin: those that save the technician more than they cost.
   */
  Optional<Step> shortenVisit(BestWork work) {
    if (!present.isCall() || !work.hasChecks() || asked() >= MOST_FOR_A_VISIT) {
      return Optional.empty();
    }
    Site site = sites.site(present.state.told().site());
    Set<String> repairs =
        present.base.repairs().values().stream()
            .filter(site::allows)
            .map(Repair::id)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return work.question(repairs);
  }

  private long asked() {
    return present.state.answers().stream()
        .map(a -> present.base.checks().get(a.check()))
        .filter(c -> c != null && c.kind() == Check.Kind.CHECK && !c.danger())
        .count();
  }

  /** Whether only proofs are open that nothing done on this call makes necessary. */
  boolean isSolved(List<Check> open) {
    return present.isCall()
        && !open.isEmpty()
        && present
            .repairs()
            .allMatch(
                r ->
                    r.who() == present.role()
                        && open.stream().noneMatch(p -> r.proofs().contains(p.id()))
                        && open.stream().noneMatch(present::isOpenTo));
  }

  /** What the caller watches for after what was done. */
  List<String> watch() {
    return present
        .repairs()
        .flatMap(r -> present.base.telephone().watch().getOrDefault(r.id(), List.of()).stream())
        .distinct()
        .toList();
  }
}
