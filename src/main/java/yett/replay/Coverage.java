package yett.replay;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.belief.CardModel;
import yett.belief.Lookalikes;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Lists what replayed cases do not test of a rule base.
 *
 * @param causes that come first at the end of no case
 * @param checks that no case was asked
 * @param repairs that were done in no case
 * @param proofs that were asked in no case
 */
public record Coverage(
    List<String> causes, List<String> checks, List<String> repairs, List<String> proofs) {
  /**
   * Distance between two causes on a check (total variation) below which the check does not tell
   * them apart.
   */
  private static final double TOO_LITTLE = 0.35;

  public static Coverage of(RuleBase base, Collection<Replayed> cases) {
    Set<String> first = new HashSet<>();
    Set<String> seen = new HashSet<>();
    for (Replayed replayed : cases) {
      replayed.ranking().stream().limit(1).forEach(r -> first.add(r.cause()));
      replayed
          .steps()
          .forEach(
              s -> {
                seen.add(s.id());
                s.looks().forEach(l -> seen.add(l.check()));
              });
    }
    return new Coverage(
        without(base.causes(), first, c -> true),
        without(base.checks(), seen, c -> c.kind() == Check.Kind.CHECK),
        without(base.repairs(), seen, r -> true),
        without(base.checks(), seen, c -> c.kind() == Check.Kind.PROOF));
  }

  /** Chance from which a cause counts as considered in a case; considered judgement. */
  private static final double IN_SIGHT = 0.02;

  /**
   * The causes that cases are about: their true causes, and those with a considerable chance at
   * their end.
   */
  public static Set<String> about(Collection<RecordedCase> cases, Collection<Replayed> replayed) {
    Set<String> causes = new HashSet<>();
    cases.forEach(c -> c.truth().ifPresent(causes::addAll));
    replayed.forEach(
        r ->
            r.ranking().stream()
                .filter(c -> c.chance() >= IN_SIGHT && !c.cause().equals(Cause.NOT_IN_RULE_BASE))
                .forEach(c -> causes.add(c.cause())));
    return causes;
  }

  /**
   * The part of it that concerns some causes or somebody's own cards: own cards first, then checks
   * by how clearly the causes show on them. Own cards about other things are listed, but bring
   * nothing with them.
   *
   * @param mine ids of the cards that somebody is working on
   */
  public Coverage near(RuleBase base, Set<String> about, Set<String> mine) {
    Predicate<String> repairs =
        id -> base.repairs().get(id).removes().keySet().stream().anyMatch(about::contains);
    Set<String> due = new HashSet<>();
    base.repairs().values().stream()
        .filter(r -> repairs.test(r.id()))
        .forEach(r -> due.addAll(r.proofs()));
    return new Coverage(
        mineFirst(causes, about::contains, mine),
        mineFirst(
            checks.stream()
                .sorted(Comparator.comparingDouble(id -> -shown(base.checks().get(id), about)))
                .toList(),
            id -> shown(base.checks().get(id), about) > 0,
            mine),
        mineFirst(this.repairs, repairs, mine),
        mineFirst(proofs, due::contains, mine));
  }

  /**
   * The largest difference between any of some causes and a sound gate on a check (total
   * variation).
   */
  private static double shown(Check check, Set<String> about) {
    return check.likelihood().entrySet().stream()
        .filter(row -> about.contains(row.getKey()))
        .mapToDouble(
            row ->
                IntStream.range(0, row.getValue().length)
                    .mapToDouble(o -> Math.abs(row.getValue()[o] - check.otherwise()[o]) / 2)
                    .sum())
        .max()
        .orElse(0);
  }

  private static List<String> mineFirst(
      List<String> ids, Predicate<String> near, Set<String> mine) {
    return ids.stream()
        .filter(id -> mine.contains(id) || near.test(id))
        .sorted(Comparator.comparing(id -> !mine.contains(id)))
        .toList();
  }

  private static <C> List<String> without(
      Map<String, C> cards, Set<String> ids, Predicate<C> kind) {
    return cards.entrySet().stream()
        .filter(e -> kind.test(e.getValue()) && !ids.contains(e.getKey()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * Pairs of causes that no check tells apart well and no one repair removes together, so that a
   * person may repair the wrong one.
   */
  public static List<Lookalikes.Pair> lookalikes(RuleBase base) {
    Set<String> checks =
        base.ordinaryChecks()
            .filter(c -> !c.danger())
            .map(Check::id)
            .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    return Lookalikes.among(CardModel.of(base), checks, TOO_LITTLE).stream()
        .filter(p -> canBothBe(base, p) && !together(base, p))
        .toList();
  }

  /**
   * Whether a pair can be confused at one gate. Not if their sites exclude each other; the cause
   * without a card is left out, because it can look like anything.
   */
  private static boolean canBothBe(RuleBase base, Lookalikes.Pair pair) {
    Cause one = base.causes().get(pair.one());
    Cause other = base.causes().get(pair.other());
    boolean known =
        !one.id().equals(Cause.NOT_IN_RULE_BASE) && !other.id().equals(Cause.NOT_IN_RULE_BASE);
    return known
        && one.onlyIf().entrySet().stream()
            .allMatch(
                e -> {
                  List<String> answers = other.onlyIf().get(e.getKey());
                  return answers == null || answers.stream().anyMatch(e.getValue()::contains);
                });
  }

  private static boolean together(RuleBase base, Lookalikes.Pair pair) {
    return base.repairs().values().stream()
        .map(r -> r.removes().keySet())
        .anyMatch(removed -> removed.contains(pair.one()) && removed.contains(pair.other()));
  }
}
