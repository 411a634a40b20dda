package yett.interview.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.moment.Present;
import yett.interview.setup.SetUpSteps;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Pressing;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.Telephone;
import yett.rules.Conclusion;

/**
 * Chooses the questions for a caller on the telephone, where they differ from those at the gate:
 * first looks that let the caller put the fault right, later those that prepare the visit.
 */
public record CallPolicy(Present present, SiteFacts sites) {
  /** Number of questions after which a caller gets none that only prepare the visit. */
  private static final int MOST_FOR_A_VISIT = 7;

  /** Number of answers in a row without information after which the questions end. */
  private static final int UNTOLD = 4;

  /** Most looks that are chosen by how often the caller can put the fault right afterwards. */
  private static final int HELP_FIRST = 4;

  /**
   * An outcome points to a repair that cures with at least this chance when the outcome is seen.
   */
  private static final double POINTS_TO = 0.25;

  /**
   * Chance of the likeliest cause from which the plan chooses the looks, except those with {@link
   * #HELPS_OFTEN}.
   */
  private static final double AS_GOOD_AS_FOUND = 0.5;

  /**
   * Gain in chance from which a look comes before the plan's choice even if a cause is almost
   * found.
   */
  private static final double HELPS_OFTEN = 0.05;

  /**
   * Least gain in chance for which a look comes before the plan's choice; also the least chance of
   * a repair that puts right something that was seen.
   */
  private static final double WORTH_ASKING = 0.02;

  /** Least chance of success for which a free repair is tried before somebody is sent. */
  private static final double WORTH_A_TRY = 0.15;

  /** Chance of a gate that works as usual now, from which that is asked before somebody is sent. */
  private static final double WELL_MAY_BE = 0.3;

  /** Chance from which what was seen out of place is put back before anything else is asked. */
  private static final double PUT_BACK = 0.2;

  /**
   * An outcome speaks for a cause if it is at least this many times as likely with the cause as
   * without.
   */
  private static final double SPEAKS_FOR = 10;

  /**
   * When nothing is left to ask: the likeliest repair that the caller may do and that costs
   * nothing. One with little chance is offered only if something was seen that speaks for it.
   */
  public Optional<Step> lastTry(BestWork work, SetUpSteps steps) {
    return free(work, r -> present.chance(r) >= (isSpokenFor(r) ? WORTH_ASKING : WORTH_A_TRY))
        .map(r -> steps.mend(r, Optional.empty(), Occasion.of(Occasion.Kind.LAST_TRY)));
  }

  /** The look for which a repair waits that the caller may well cure it with. */
  public Optional<Step> lookBeforeTry(BestWork work, SetUpSteps steps) {
    if (!present.isCall()) {
      return Optional.empty();
    }
    return firstOpen(
        present.base().repairs().values().stream()
            .filter(r -> r.who() == present.role() && r.price() == 0)
            .filter(r -> present.chance(r) >= WORTH_A_TRY)
            .flatMap(r -> r.measureFirst().stream()),
        work,
        steps);
  }

  /** The first of these looks that can be asked for now. */
  private Optional<Step> firstOpen(Stream<String> checks, BestWork work, SetUpSteps steps) {
    Set<String> open = work.checks(false);
    return checks
        .filter(id -> id != null && open.contains(id))
        .findFirst()
        .map(present.base().checks()::get)
        .map(c -> steps.ask(c, Optional.empty(), Occasion.of(Occasion.Kind.WORTH)));
  }

  /**
   * Before somebody is sent: whether it works as usual now, if it well may, since what comes and
   * goes is often gone.
   */
  public Optional<Step> lastQuestion(BestWork work, SetUpSteps steps) {
    Check now = present.base().checks().get(Telephone.WORKS_AGAIN);
    boolean open = present.isCall() && now != null && work.checks(false).contains(now.id());
    return open && chance(now, 0) >= WELL_MAY_BE
        ? Optional.of(steps.ask(now, Optional.empty(), Occasion.of(Occasion.Kind.WORTH)))
        : Optional.empty();
  }

  /** The chance of an outcome, whatever the cause. */
  private double chance(Check check, int outcome) {
    double[] now = present.remaining();
    double others = 1;
    for (int i = 0; i < now.length; i++) {
      if (check.likelihood().containsKey(present.belief().model().causes().get(i))) {
        others -= now[i];
      }
    }
    return chance(check, outcome, cause -> 1) + Math.max(0, others) * check.otherwise()[outcome];
  }

  /**
   * The repair that puts right what was seen out of place, at once: the try tells more than further
   * questions.
   */
  public Optional<Step> putRight(BestWork work, SetUpSteps steps) {
    if (present.state().work().intent().isPresent()) {
      return Optional.empty();
    }
    return free(work, r -> isSpokenFor(r) && present.chance(r) >= PUT_BACK)
        .map(r -> steps.mend(r, Optional.empty(), Occasion.of(Occasion.Kind.WORTH)));
  }

  /** The likeliest of these repairs that the caller may do and that cost nothing. */
  private Optional<Repair> free(BestWork work, Predicate<Repair> which) {
    if (!present.isCall()) {
      return Optional.empty();
    }
    return work.repairs().stream()
        .map(present.base().repairs()::get)
        .filter(r -> r.price() == 0 && !r.removes().containsKey(Cause.NOTHING_WRONG))
        .filter(which)
        .max(Comparator.comparingDouble(present::chance));
  }

  /** Whether an answer speaks plainly for a cause that this repair removes. */
  private boolean isSpokenFor(Repair repair) {
    return present.judgement().findings().stream().anyMatch(f -> speaksFor(f, repair));
  }

  private boolean speaksFor(Conclusion.Finding seen, Repair repair) {
    Check check = present.base().checks().get(seen.check());
    if (check == null || present.answer(check.id()).filter(Answer::tells).isEmpty()) {
      return false;
    }
    return Stream.concat(seen.also().stream(), Stream.of(seen.outcome()))
        .mapToInt(check::indexOf)
        .anyMatch(
            outcome ->
                outcome > 0
                    && repair.removes().keySet().stream()
                        .map(check.likelihood()::get)
                        .anyMatch(
                            r ->
                                r != null
                                    && r[outcome] >= SPEAKS_FOR * check.otherwise()[outcome]));
  }

  /**
   * What may make the call urgent; empty unless this is a call. It depends only on the complaints,
   * so it can be asked at once.
   */
  public List<Pressing> pressing() {
    return present.isCall() ? pressing(present.base(), present.state()) : List.of();
  }

  /**
   * What may make this call urgent and is not told already: who said that somebody is shut in is
   * not asked whether anybody is.
   */
  public static List<Pressing> pressing(RuleBase base, CaseState state) {
    List<String> said = state.told().complaints().orElse(List.of());
    return base.telephone().pressing(said).stream()
        .filter(
            p ->
                base.telephone().spoken().dangers("pressing", p.id()).keySet().stream()
                    .noneMatch(danger -> isTold(base.checks().get(danger), state)))
        .toList();
  }

  private static boolean isTold(Check danger, CaseState state) {
    return state
        .latest(danger.id())
        .flatMap(a -> a.answer().choice())
        .filter(o -> danger.indexOf(o) > 0)
        .isPresent();
  }

  /**
   * A question that tells what to bring and where to begin, when no repair by the caller will help.
   * Empty if none saves the technician more time than it costs, or enough was asked.
   */
  public Optional<Step> shortenVisit(BestWork work) {
    if (!present.isCall() || asked() >= MOST_FOR_A_VISIT) {
      return Optional.empty();
    }
    Site site = sites.site(present.state().told().site());
    Set<String> repairs =
        present.base().repairs().values().stream()
            .filter(site::allows)
            .map(Repair::id)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return work.question(repairs, false).or(() -> work.question(repairs, true));
  }

  /**
   * Whether the caller's last {@link #UNTOLD} answers told nothing, so that more questions would
   * only try their patience.
   */
  public boolean cannotTell() {
    if (!present.isCall()) {
      return false;
    }
    List<CaseState.Answered> asked =
        present.state().answers().stream().filter(present::isLook).toList();
    return asked.size() >= UNTOLD
        && asked.subList(asked.size() - UNTOLD, asked.size()).stream()
            .noneMatch(a -> a.answer().tells());
  }

  /**
   * The look that comes before all others by what was said: it tells how dangerous the gate is as
   * it stands.
   */
  public Optional<Step> lookFirst(BestWork work, SetUpSteps steps) {
    if (!present.isCall()) {
      return Optional.empty();
    }
    return firstOpen(
        present.state().told().complaints().orElse(List.of()).stream()
            .map(present.base().telephone().lookFirst()::get),
        work,
        steps);
  }

  /** What is asked at once after the last answer, such as which of several switches is pressed. */
  public Optional<Step> lookNext(BestWork work, SetUpSteps steps) {
    if (!present.isCall()) {
      return Optional.empty();
    }
    return firstOpen(
        present.state().answers().stream()
            .sorted(Comparator.comparingLong(CaseState.Answered::event).reversed())
            .filter(this::isOutOfOrder)
            .map(a -> present.base().telephone().lookNext().get(a.check())),
        work,
        steps);
  }

  private boolean isOutOfOrder(CaseState.Answered answered) {
    Check check = present.base().checks().get(answered.check());
    return check != null && answered.answer().choice().map(check::indexOf).orElse(0) > 0;
  }

  /**
   * The look after which the caller most often puts the fault right, so that nobody need be sent;
   * for the first looks of a call only. Minutes decide only between looks that help equally often,
   * because a visit costs far more.
   */
  public Optional<Step> helpFirst(BestWork work, SetUpSteps steps) {
    boolean underWay =
        present.state().work().epoch() > 0 || present.state().work().intent().isPresent();
    if (!present.isCall() || underWay || asked() >= HELP_FIRST) {
      return Optional.empty();
    }
    boolean found = Arrays.stream(present.remaining()).max().orElse(0) >= AS_GOOD_AS_FOUND;
    double worth = found ? HELPS_OFTEN : WORTH_ASKING;
    List<Try> tries = tries();
    Set<String> open = work.checks(false);
    return present.base().checks().values().stream()
        .filter(c -> open.contains(c.id()))
        .map(c -> new Helpful(c, help(c, tries)))
        .filter(h -> h.help() >= worth)
        .max(Comparator.comparingDouble(Helpful::help).thenComparing(h -> -h.check().minutes()))
        .map(h -> steps.ask(h.check(), Optional.empty(), Occasion.of(Occasion.Kind.WORTH)));
  }

  private record Helpful(Check check, double help) {}

  /**
   * A repair that the caller may do.
   *
   * @param chance that it removes something if nothing more is asked
   */
  private record Try(Repair repair, double chance) {}

  private List<Try> tries() {
    return present.base().repairs().values().stream()
        .filter(r -> r.who() == present.role())
        .map(r -> new Try(r, present.chance(r)))
        .toList();
  }

  /**
   * By how much this look raises the chance that the caller cures the fault, compared with trying
   * the same repair without it. Outcomes count that point to one of the caller's repairs, also if
   * that repair is not possible now because a danger is not excluded or everything is wet: then the
   * look saves the technician the search.
   */
  private double help(Check check, List<Try> tries) {
    double help = 0;
    for (int o = 1; o < check.outcomes().size(); o++) {
      int outcome = o;
      double seen = chance(check, outcome, cause -> 1) + check.otherwise()[o];
      help += tries.stream().mapToDouble(t -> added(check, outcome, seen, t)).max().orElse(0);
    }
    return help;
  }

  private double added(Check check, int outcome, double seen, Try without) {
    double with = chance(check, outcome, c -> without.repair().removes().getOrDefault(c, 0.0));
    return with >= POINTS_TO * seen ? Math.max(0, with - seen * without.chance()) : 0;
  }

  /**
   * The joint chance of an outcome and the causes that have a likelihood row for this check, each
   * cause with its weight.
   */
  private double chance(Check check, int outcome, ToDoubleFunction<String> weight) {
    double[] now = present.remaining();
    List<String> causes = present.belief().model().causes();
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
    return present.state().answers().stream().filter(present::isLook).count();
  }

  /**
   * Whether the call is solved: the open proofs are for somebody else, and no repair on this call
   * makes one of them necessary.
   */
  public boolean isSolved(List<Check> open) {
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

  /** What the caller should watch for after the repairs that were done. */
  public List<String> watch() {
    return present
        .repairs()
        .flatMap(r -> present.base().telephone().watch().getOrDefault(r.id(), List.of()).stream())
        .distinct()
        .toList();
  }
}
