package yett.interview;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Pressing;
import yett.knowledge.Repair;
import yett.rules.Conclusion;

/** What is asked of a caller that nobody at the gate is asked. */
record CallPolicy(Present present, SiteFacts sites) {
  /** Beyond so many questions a caller is not asked for the technician's sake. */
  private static final int MOST_FOR_A_VISIT = 7;

  /** So many answers in a row that tell nothing end the asking. */
  private static final int UNTOLD = 4;

  /** So many looks come first for the sake of what the caller can put right. */
  private static final int HELP_FIRST = 4;

  /** An outcome points to a repair that helps so often when it is seen. */
  private static final double POINTS_TO = 0.25;

  /** From there on the plan leads, but for looks that help often. */
  private static final double AS_GOOD_AS_FOUND = 0.5;

  /** A look that helps so often comes before the plan's. */
  private static final double HELPS_OFTEN = 0.05;

  /** A look that helps less often than this comes in its turn. */
  private static final double WORTH_ASKING = 0.02;

  /** What costs nobody anything is tried on no more than this before somebody is sent. */
  private static final double WORTH_A_TRY = 0.15;

  /** What was seen speaks for a cause when it is so many times as common with it as without. */
  private static final double SPEAKS_FOR = 10;

  /**
   * When nothing is left to ask: what the caller may put right at no price, the likeliest first. Of
   * what is less likely, only what was seen out of its place is put back.
   */
  Optional<Step> lastTry(BestWork work, SetUpSteps steps) {
    if (!present.isCall()) {
      return Optional.empty();
    }
    return work.repairs().stream()
        .map(present.base.repairs()::get)
        .filter(r -> r.price() == 0 && !r.removes().containsKey(Cause.NOTHING_WRONG))
        .filter(r -> present.chance(r) >= (putsBack(r) ? WORTH_ASKING : WORTH_A_TRY))
        .max(Comparator.comparingDouble(present::chance))
        .map(r -> steps.mend(r, Optional.empty(), Occasion.of(Occasion.Kind.LAST_TRY)));
  }

  /** Whether something that was seen speaks plainly for what this repair removes. */
  private boolean putsBack(Repair repair) {
    return present.judgement.findings().stream().anyMatch(f -> speaksFor(f, repair));
  }

  private boolean speaksFor(Conclusion.Finding seen, Repair repair) {
    Check check = present.base.checks().get(seen.check());
    if (check == null || present.answer(check.id()).filter(Answer::tells).isEmpty()) {
      return false;
    }
    int outcome = check.outcomes().stream().map(Check.Outcome::id).toList().indexOf(seen.outcome());
    return outcome > 0
        && repair.removes().keySet().stream()
            .map(check.likelihood()::get)
            .anyMatch(r -> r != null && r[outcome] >= SPEAKS_FOR * check.otherwise()[outcome]);
  }

  /** Depends on nothing but what was said, so that it can be asked at once. */
  List<Pressing> pressing() {
    List<String> said = present.state.told().complaints().orElse(List.of());
    return present.isCall() ? present.base.telephone().pressing(said) : List.of();
  }

  /**
   * When nothing that a caller may do will help, a few more questions may still tell what to bring
   * and where to begin: those that save the technician more than they cost.
   */
  Optional<Step> shortenVisit(BestWork work) {
    if (!present.isCall() || asked() >= MOST_FOR_A_VISIT) {
      return Optional.empty();
    }
    Site site = sites.site(present.state.told().site());
    Set<String> repairs =
        present.base.repairs().values().stream()
            .filter(site::allows)
            .map(Repair::id)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return work.question(repairs, false).or(() -> work.question(repairs, true));
  }

  /**
   * Whether the caller has told nothing for so long that to ask on would only try their patience.
   */
  boolean cannotTell() {
    if (!present.isCall()) {
      return false;
    }
    List<CaseState.Answered> asked =
        present.state.answers().stream().filter(present::isLook).toList();
    return asked.size() >= UNTOLD
        && asked.subList(asked.size() - UNTOLD, asked.size()).stream()
            .noneMatch(a -> a.answer().tells());
  }

  /**
   * The first looks of a call are those after which the caller most often puts it right without
   * anybody being sent. The minutes that one takes hardly count beside a visit, and decide only
   * between looks that help as often.
   */
  Optional<Step> helpFirst(BestWork work, SetUpSteps steps) {
    boolean underWay =
        present.state.work().epoch() > 0 || present.state.work().intent().isPresent();
    if (!present.isCall() || underWay || asked() >= HELP_FIRST) {
      return Optional.empty();
    }
    boolean found = Arrays.stream(present.remaining()).max().orElse(0) >= AS_GOOD_AS_FOUND;
    double worth = found ? HELPS_OFTEN : WORTH_ASKING;
    Set<String> open = work.checks(false);
    return present.base.checks().values().stream()
        .filter(c -> open.contains(c.id()) && help(c) >= worth)
        .max(Comparator.comparingDouble(this::help).thenComparing(c -> -c.minutes()))
        .map(c -> steps.ask(c, Optional.empty(), Occasion.of(Occasion.Kind.WORTH)));
  }

  /**
   * How much more often the caller puts it right, for good, after this look than by the same repair
   * without it: outcomes that point to one of their repairs. Where that repair is not for now,
   * because a danger is not excluded or all is wet, the look spares whoever goes the search.
   */
  private double help(Check check) {
    List<Repair> repairs =
        present.base.repairs().values().stream().filter(r -> r.who() == present.role()).toList();
    double help = 0;
    for (int o = 1; o < check.outcomes().size(); o++) {
      int outcome = o;
      double seen = chance(check, outcome, cause -> 1) + check.otherwise()[o];
      help += repairs.stream().mapToDouble(r -> added(check, outcome, seen, r)).max().orElse(0);
    }
    return help;
  }

  private double added(Check check, int outcome, double seen, Repair repair) {
    double with = chance(check, outcome, c -> repair.removes().getOrDefault(c, 0.0));
    return with >= POINTS_TO * seen ? Math.max(0, with - seen * present.chance(repair)) : 0;
  }

  /** Of an outcome together with a cause that makes it other than usual, so weighted. */
  private double chance(Check check, int outcome, ToDoubleFunction<String> weight) {
    double[] now = present.remaining();
    List<String> causes = present.belief.model().causes();
    double chance = 0;
    for (int i = 0; i < now.length; i++) {
      double[] row = check.likelihood().get(causes.get(i));
      if (row != null) {
        chance += now[i] * weight.applyAsDouble(causes.get(i)) * row[outcome];
      }
    }
    return chance;
  }

  private long asked() {
    return present.state.answers().stream().filter(present::isLook).count();
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
