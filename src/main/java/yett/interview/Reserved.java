package yett.interview;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yett.belief.CausalModel;
import yett.knowledge.Repair;

/** Repairs that would be worth trying, if somebody better qualified were there. */
final class Reserved {
  /** Chance that a repair cures, from which on it is named (considered judgement). */
  private static final double NAMED = 0.1;

  private static final int MOST = 2;

  private final Present present;
  private final SiteFacts sites;

  Reserved(Present present, SiteFacts sites) {
    this.present = present;
    this.sites = sites;
  }

  /** The most promising first. */
  List<HandOverReason.Reserved> repairs() {
    Site site = sites.site(present.state.told().site());
    return present.base.repairs().values().stream()
        .filter(r -> !present.role().may(r.who()) && site.allows(r))
        .filter(r -> cures(r) >= NAMED)
        .sorted(Comparator.comparingDouble((Repair r) -> -cures(r)))
        .limit(MOST)
        .map(
            r ->
                new HandOverReason.Reserved(
                    r, Optional.ofNullable(present.base.mainsParts().get(r.id()))))
        .toList();
  }

  private double cures(Repair repair) {
    double[] chances = present.belief.remaining();
    CausalModel model = present.belief.model();
    return repair.removes().entrySet().stream()
        .filter(e -> model.causes().contains(e.getKey()))
        .mapToDouble(e -> e.getValue() * chances[model.indexOf(e.getKey())])
        .max()
        .orElse(0);
  }
}
