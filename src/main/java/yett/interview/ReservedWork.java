package yett.interview;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yett.belief.CausalModel;
import yett.knowledge.Repair;
import yett.plan.Advice;

/** Repairs that would be worth trying, if somebody better qualified were there. */
record ReservedWork(Present present, SiteFacts sites) {
  /** Chance that a repair cures, from which on it is named (considered judgement). */
  private static final double NAMED = 0.1;

  private static final int MOST = 2;

  /** Nobody is sent for a repair that is less likely to help, while a look would still pay. */
  private static final double FOUND = 0.5;

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

  /**
   * What whoever comes next will want to know: where nothing is left that this person may repair,
   * the checks open to them still narrow down which of the other repairs it takes, and what to
   * bring. They are asked as if the person might do those repairs, and end when one of them would
   * come next. What was put off comes last: then also for the sake of repairs that this person
   * could not do, which somebody else will.
   */
  Optional<Step> narrowed(BestWork work) {
    Site site = sites.site(present.state.told().site());
    Set<String> repairs = work.repairs();
    present.base.repairs().values().stream()
        .filter(r -> !present.role().may(r.who()) && site.allows(r))
        .map(Repair::id)
        .forEach(repairs::add);
    return work.question(repairs, false, this::lookFirst).or(() -> putOff(work, repairs));
  }

  /** Whoever comes could try a likely repair at once; this person has only looks to offer. */
  private Advice lookFirst(Advice advice) {
    boolean pays = !advice.candidates().isEmpty() && advice.candidates().get(0).saves() > 0;
    return advice.kind() == Advice.Kind.REPAIR
            && pays
            && present.chance(present.base.repairs().get(advice.jobs().get(0).repair())) < FOUND
        ? advice.asking(advice.candidates().get(0).check())
        : advice;
  }

  private Optional<Step> putOff(BestWork work, Set<String> repairs) {
    Set<String> anybodys = new LinkedHashSet<>(repairs);
    anybodys.addAll(present.state.work().declined().keySet());
    return work.question(anybodys, true);
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
