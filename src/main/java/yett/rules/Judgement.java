package yett.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.rules.Conclusion.Contradiction;
import yett.rules.Conclusion.Expectation;
import yett.rules.Conclusion.Finding;
import yett.rules.Conclusion.FollowUp;
import yett.rules.Conclusion.Forbidden;
import yett.rules.Conclusion.Odds;
import yett.rules.Conclusion.Remark;
import yett.rules.Conclusion.Stands;
import yett.rules.Conclusion.StopNow;
import yett.rules.Conclusion.Unassumed;
import yett.rules.Conclusion.Unavailable;
import yett.rules.Conclusion.Withheld;

/**
 * All conclusions of the rules on a case, in an order independent of the order of firing. Two
 * judgements are equal if their conclusions are.
 */
public final class Judgement {
  /**
   * Conclusions that are equal in this order, about the same card with the same words from the same
   * rule, count as one.
   */
  private static final Comparator<Conclusion> ORDER =
      Comparator.<Conclusion, String>comparing(c -> c.getClass().getName())
          .thenComparing(Conclusion::about)
          .thenComparing(c -> c.reason().rule())
          .thenComparing(Conclusion::toString);

  /** A reading has changed if the chance of such a difference without a change is at most this. */
  private static final double DOUBT = 0.2;

  private final List<Conclusion> conclusions;
  private final Map<Class<?>, List<Conclusion>> byKind = new HashMap<>();
  private Set<String> unavailable;

  /**
   * Answers that were judged by an earlier usual range, each by event number with that judgement.
   */
  private final Map<Long, Judgement> then;

  private final Optional<Judgement> beside;

  private Judgement(
      List<Conclusion> sorted, Map<Long, Judgement> then, Optional<Judgement> beside) {
    this.conclusions = List.copyOf(sorted);
    this.then = Map.copyOf(then);
    this.beside = beside;
    conclusions.forEach(c -> byKind.computeIfAbsent(c.getClass(), k -> new ArrayList<>()).add(c));
  }

  /** A judgement with these conclusions; fast if most are in order already. */
  public static Judgement of(List<Conclusion> conclusions) {
    return of(conclusions, Map.of());
  }

  private static Judgement of(List<Conclusion> conclusions, Map<Long, Judgement> then) {
    List<Conclusion> sorted = new ArrayList<>(conclusions);
    sorted.sort(ORDER);
    List<Conclusion> once = new ArrayList<>(sorted.size());
    for (Conclusion conclusion : sorted) { // equal ones are adjacent
      if (once.isEmpty() || !once.get(once.size() - 1).equals(conclusion)) {
        once.add(conclusion);
      }
    }
    return new Judgement(once, then, Optional.empty());
  }

  public List<Conclusion> conclusions() {
    return conclusions;
  }

  /** A copy without the findings on these answers, which were replaced by others. */
  public Judgement without(Set<Long> events) {
    if (events.isEmpty()) {
      return this;
    }
    return new Judgement(
        conclusions.stream()
            .filter(c -> !(c instanceof Finding f && events.contains(f.event())))
            .toList(),
        then,
        beside);
  }

  /**
   * A copy in which some answers are judged as they were earlier.
   *
   * @param then the earlier judgement, by event number of the answer
   */
  public Judgement judgedThen(Map<Long, Judgement> then) {
    List<Conclusion> all = new ArrayList<>(without(then.keySet()).conclusions);
    then.forEach((event, judged) -> judged.finding(event).ifPresent(all::add));
    return of(all, then);
  }

  /** A copy with a second judgement of the same answers, used only by {@link #changed}. */
  public Judgement beside(Judgement other) {
    return new Judgement(conclusions, then, Optional.of(other));
  }

  /**
   * The range that a reading would have if it had not changed. Empty unless it has certainly
   * changed compared with earlier readings on this gate; what is usual on such gates does not
   * count.
   */
  public Optional<Expectation> changed(long event) {
    return beside.flatMap(
        b ->
            b.finding(event)
                .filter(f -> f.weights().get(0) < DOUBT)
                .filter(
                    f -> finding(event).filter(g -> !g.outcome().equals(f.outcome())).isPresent())
                .flatMap(f -> b.expectation(f.check())));
  }

  /** Findings in the order of the answers. */
  public List<Finding> findings() {
    return of(Finding.class)
        .sorted(Comparator.comparingLong(Finding::event).thenComparing(Finding::check))
        .toList();
  }

  public Optional<Finding> finding(long event) {
    return of(Finding.class).filter(f -> f.event() == event).findFirst();
  }

  /**
   * The usual range by which an answer was judged; that for present readings if the answer was not
   * judged by an earlier one.
   */
  public Optional<Expectation> expectation(String check, long event) {
    return then.getOrDefault(event, this).expectation(check);
  }

  /** The usual range of a check; of several ranges the narrowest. */
  public Optional<Expectation> expectation(String check) {
    return of(Expectation.class)
        .filter(e -> e.check().equals(check))
        .min(Comparator.comparingDouble(e -> e.high() - e.low()));
  }

  public List<Odds> odds() {
    return of(Odds.class).toList();
  }

  /** For each cause, the product of all factors on its odds. */
  public Map<String, Double> oddsFactors() {
    Map<String, Double> factors = new TreeMap<>();
    of(Odds.class).forEach(o -> factors.merge(o.cause(), o.factor(), (a, b) -> a * b));
    return factors;
  }

  public List<Contradiction> contradictions() {
    return of(Contradiction.class).toList();
  }

  public List<StopNow> stops() {
    return of(StopNow.class).toList();
  }

  /** Set-ups that nobody may enter now. */
  public Set<String> forbidden() {
    return of(Forbidden.class).map(Forbidden::setUp).collect(Collectors.toSet());
  }

  /** Why nobody may enter a set-up now, each reason once; empty if it may be entered. */
  public List<String> whyForbidden(String setUp) {
    return of(Forbidden.class)
        .filter(f -> f.setUp().equals(setUp))
        .map(f -> f.reason().because())
        .distinct()
        .toList();
  }

  /** Deeds that a danger forbids although another danger calls for them. */
  public Set<String> withheld() {
    return of(Withheld.class).map(Withheld::deed).collect(Collectors.toSet());
  }

  /** Cards that may not or cannot be used here, each with the first reason. */
  public Set<String> unavailable() {
    if (unavailable == null) {
      unavailable = of(Unavailable.class).map(Unavailable::card).collect(Collectors.toSet());
    }
    return unavailable;
  }

  public List<Unavailable> unavailabilities() {
    return of(Unavailable.class).toList();
  }

  /** Looks whose ordinary answer nobody gives by leaving them out. */
  public Set<String> unassumed() {
    return of(Unassumed.class).map(Unassumed::check).collect(Collectors.toSet());
  }

  public List<FollowUp> followUps() {
    return of(FollowUp.class).toList();
  }

  /** How the gate stands, in words; empty if nobody said. */
  public List<String> stands() {
    return of(Stands.class).map(Stands::words).distinct().toList();
  }

  public List<Remark> remarks() {
    return of(Remark.class).toList();
  }

  private <C extends Conclusion> Stream<C> of(Class<C> kind) {
    return byKind.getOrDefault(kind, List.of()).stream().map(kind::cast);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Judgement j && j.conclusions.equals(conclusions);
  }

  @Override
  public int hashCode() {
    return conclusions.hashCode();
  }

  @Override
  public String toString() {
    return conclusions.toString();
  }
}
