package yett.interview.search;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.belief.CausalModel;
import yett.interview.moment.Present;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.step.HandOverReason;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.plan.Advice;
import yett.plan.Telling;

/** Finds repairs that would be worth trying by somebody better qualified. */
public record ReservedWork(Present present, SiteFacts sites) {
  /** Chance of a cure from which a repair is named (considered judgement). */
  private static final double NAMED = 0.1;

  private static final int MOST = 2;

  /**
   * Chance of a cure below which nobody is sent for a repair while a look is still worth making.
   */
  private static final double FOUND = 0.5;

  /** Least average information (bits) for which a check is made for the sake of the next one. */
  private static final double LEAST_BITS = 0.1;

  /** The repairs, the most promising first. */
  public List<HandOverReason.Reserved> repairs() {
    Site site = sites.site(present.state().told().site());
    return present.base().repairs().values().stream()
        .filter(r -> isForOthers(r) && site.allows(r))
        .filter(r -> cures(r) >= NAMED)
        .sorted(Comparator.comparingDouble((Repair r) -> -cures(r)))
        .limit(MOST)
        .map(
            r ->
                new HandOverReason.Reserved(
                    r,
                    Optional.ofNullable(present.base().mainsParts().get(r.id())),
                    isForOthers(r.who()) ? Optional.empty() : reading(r)))
        .toList();
  }

  private boolean isForOthers(Role who) {
    return !present.role().may(who);
  }

  /** Whether somebody better qualified has to do it, or to read something before it. */
  private boolean isForOthers(Repair repair) {
    return isForOthers(repair.who())
        || present.unavailable().contains(repair.id()) && reading(repair).isPresent();
  }

  /** What only somebody better qualified may read before the repair, and nobody has read. */
  private Optional<Check> reading(Repair repair) {
    return repair.measureFirst().stream()
        .map(present.base().checks()::get)
        .filter(c -> isForOthers(c.who()))
        .filter(c -> present.state().latest(c.id()).filter(a -> a.answer().tells()).isEmpty())
        .findFirst();
  }

  /** The repairs that could not be done, the most promising first. */
  public List<HandOverReason.Refused> refused() {
    return present.state().work().declined().entrySet().stream()
        .filter(e -> present.base().repairs().containsKey(e.getKey()))
        .map(
            e ->
                new HandOverReason.Refused(
                    present.base().repairs().get(e.getKey()), e.getValue().why()))
        .sorted(Comparator.comparingDouble((HandOverReason.Refused r) -> -cures(r.repair())))
        .toList();
  }

  /**
   * Likely repairs that this person may do, and that are not worth it only because something else
   * could not be done: they would not make the gate run by themselves.
   */
  public List<Repair> alone() {
    Set<String> refused = present.state().work().declined().keySet();
    Set<Repair> done = done();
    return present.base().repairs().values().stream()
        .filter(r -> !refused.isEmpty() && !refused.contains(r.id()) && !done.contains(r))
        .filter(r -> !present.unavailable().contains(r.id()))
        .filter(r -> cures(r) >= present.base().planning().suspicion())
        .sorted(Comparator.comparingDouble((Repair r) -> -cures(r)))
        .toList();
  }

  /**
   * A check that helps the person who comes next. When this person may do none of the repairs left,
   * their checks still narrow down which repair is needed and what to bring. Checks are chosen as
   * if this person might do those repairs, until one of the repairs would come next. Checks that
   * were put off come last, then also for repairs that this person could not do.
   */
  public Optional<Step> narrowed(BestWork work) {
    Site site = sites.site(present.state().told().site());
    Set<String> repairs = work.repairs();
    present.base().repairs().values().stream()
        .filter(r -> isForOthers(r) && site.allows(r))
        .map(Repair::id)
        .forEach(repairs::add);
    return work.question(repairs, false, advice -> lookFirst(advice, work.adviser()))
        .or(() -> putOff(work, repairs));
  }

  /**
   * The advice with a look first, because this person has only looks to offer: one that pays though
   * the next one could try a likely repair at once, and while nothing is found also the one that
   * tells most for its minutes, which pays only for whoever comes next.
   */
  private Advice lookFirst(Advice advice, Adviser adviser) {
    if (advice.kind() == Advice.Kind.ASK || advice.candidates().isEmpty()) {
      return advice;
    }
    Advice.Candidate first = advice.candidates().get(0);
    if (advice.kind() == Advice.Kind.REPAIR && first.saves() > 0 && likely(advice) < FOUND) {
      return advice.asking(first.check());
    }
    return isFound() ? advice : telling(advice, adviser).map(advice::asking).orElse(advice);
  }

  private double likely(Advice advice) {
    return present.chance(present.base().repairs().get(advice.jobs().get(0).repair()));
  }

  /**
   * Whether some cause that the cards know is more likely there than not, and has a repair that was
   * not tried yet.
   */
  private boolean isFound() {
    Set<Repair> done = done();
    return present.base().repairs().values().stream()
        .anyMatch(r -> !done.contains(r) && cures(r) >= FOUND);
  }

  private Set<Repair> done() {
    return present.repairs().collect(Collectors.toSet());
  }

  /** The check that tells most for its minutes; empty if none tells enough. */
  private Optional<String> telling(Advice advice, Adviser adviser) {
    Map<String, Double> minutes =
        advice.candidates().stream()
            .collect(Collectors.toMap(Advice.Candidate::check, Advice.Candidate::minutes));
    return adviser.tells(present.belief(), minutes.keySet()).stream()
        .filter(t -> t.bits() >= LEAST_BITS)
        .max(Comparator.comparingDouble(t -> t.bits() / Math.max(1, minutes.get(t.check()))))
        .map(Telling.Told::check);
  }

  private Optional<Step> putOff(BestWork work, Set<String> repairs) {
    Set<String> anybodys = new LinkedHashSet<>(repairs);
    anybodys.addAll(present.state().work().declined().keySet());
    return work.question(anybodys, true);
  }

  private double cures(Repair repair) {
    double[] chances = present.belief().remaining();
    CausalModel model = present.belief().model();
    return repair.removes().entrySet().stream()
        .filter(e -> model.causes().contains(e.getKey()))
        .mapToDouble(e -> e.getValue() * chances[model.indexOf(e.getKey())])
        .max()
        .orElse(0);
  }
}
