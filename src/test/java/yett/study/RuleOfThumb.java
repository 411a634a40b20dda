package yett.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import yett.belief.Belief;
import yett.belief.Support;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.plan.Advice;
import yett.plan.Planner;
import yett.testing.Advices;

/**
 * Policies that choose checks in a simple way and stop by a common rule of thumb: when the leading
 * cause is over 80 %, or no check is telling any more, the leading cause is repaired. They know the
 * belief as well as Yett does. One of them is what a careful colleague does: he goes from place to
 * place, looks and measures there what still tells anything, and repairs what he is sure of.
 */
final class RuleOfThumb implements Policy {
  /** How telling checks are put in order. */
  enum Order {
    CHEAPEST("cheapest check first"),
    INFORMATION("most informative check"),
    RANDOM("any telling check"),
    WALKING("measure until 80 %, place by place"),
    NONE("most probable repair");

    private final String words;

    Order(String words) {
      this.words = words;
    }
  }

  static final double SURE = 0.8;

  /** Nats of information on what is wrong; a check that promises less is not telling. */
  static final double TELLING = 0.01;

  /** A cause less likely than this is not repaired on suspicion. */
  static final double WORTH_TRYING = 0.02;

  private final RuleBase base;
  private final Planner planner;
  private final Order order;
  private final Random random;
  private final WalkingOrder places;

  RuleOfThumb(RuleBase base, Planner planner, Order order, long seed) {
    this.base = base;
    this.planner = planner;
    this.order = order;
    this.random = new Random(seed);
    this.places = new WalkingOrder(base);
  }

  @Override
  public String name() {
    return order.words;
  }

  @Override
  public Advice advise(Belief belief, Planner.Options options, Map<String, String> found) {
    double[] chances = belief.remaining();
    List<String> causes = belief.model().causes();
    List<Integer> ranked =
        IntStream.range(0, chances.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> -chances[i]))
            .toList();
    double leading = chances[ranked.get(0)];
    if (options.cured()) {
      return leading > SURE ? repair(causes.get(ranked.get(0)), options) : Advices.nothing();
    }
    if (leading <= SURE) {
      Optional<String> check = check(belief, options);
      if (check.isPresent()) {
        return Advices.asking(check.get());
      }
    }
    for (int i : ranked) {
      boolean givesUp = chances[i] < WORTH_TRYING || unknown(causes.get(i)) && chances[i] > SURE;
      if (givesUp) {
        return Advices.nothing();
      }
      Advice advice = repair(causes.get(i), options);
      if (advice.kind() == Advice.Kind.REPAIR) {
        return advice;
      }
    }
    return Advices.nothing();
  }

  private static boolean unknown(String cause) {
    return cause.equals(Cause.NOT_IN_RULE_BASE);
  }

  /** The first telling check in the order; nothing is weighed that does not matter for it. */
  private Optional<String> check(Belief belief, Planner.Options options) {
    Support support = belief.support(0.995, 160);
    List<Check> checks =
        new ArrayList<>(options.checks().stream().sorted().map(base.checks()::get).toList());
    return switch (order) {
      case NONE -> Optional.empty();
      case CHEAPEST -> {
        checks.sort(Comparator.comparingDouble(c -> cost(c, options)));
        yield telling(checks, belief, support);
      }
      case RANDOM -> {
        Collections.shuffle(checks, random);
        yield telling(checks, belief, support);
      }
      case INFORMATION ->
          first(checks, belief, support, tells -> Comparator.comparingDouble(c -> -tells.get(c)));
      case WALKING ->
          first(
              checks,
              belief,
              support,
              tells ->
                  Comparator.comparingInt((Check c) -> places.of(c))
                      .thenComparingDouble(c -> -tells.get(c)));
    };
  }

  /** The first of the telling checks in an order that may go by what they tell. */
  private static Optional<String> first(
      List<Check> checks,
      Belief belief,
      Support support,
      Function<Map<Check, Double>, Comparator<Check>> order) {
    Map<Check, Double> tells = new HashMap<>();
    checks.forEach(c -> tells.put(c, information(belief, support, c)));
    return checks.stream()
        .filter(c -> tells.get(c) > TELLING)
        .min(order.apply(tells))
        .map(Check::id);
  }

  private static Optional<String> telling(List<Check> checks, Belief belief, Support support) {
    return checks.stream()
        .filter(c -> information(belief, support, c) > TELLING)
        .findFirst()
        .map(Check::id);
  }

  private double cost(Check check, Planner.Options options) {
    return check.minutes() + planner.changeOfSetUp(options.setUps(), check.needs());
  }

  /** Mutual information of a check with what is wrong, in nats. */
  private static double information(Belief belief, Support support, Check check) {
    double[][] chances = belief.predict(check.id(), support);
    double[] weights = support.weights();
    double information = 0;
    for (double[] row : chances) {
      double together = 0;
      for (int h = 0; h < row.length; h++) {
        together += weights[h] * row[h];
        information += weights[h] * log(row[h]);
      }
      information -= log(together);
    }
    return information;
  }

  private static double log(double p) {
    return p > 0 ? p * Math.log(p) : 0;
  }

  /** The repair that removes a cause most surely, the cheaper one of two. */
  private Advice repair(String cause, Planner.Options options) {
    return base.repairs().values().stream()
        .filter(r -> options.repairs().contains(r.id()) && r.removes().containsKey(cause))
        .max(
            Comparator.comparingDouble((Repair r) -> Math.round(10 * r.removes().get(cause)))
                .thenComparing(r -> -r.minutes() - r.price()))
        .map(r -> Advices.repairing(r.id()))
        .orElseGet(Advices::nothing);
  }
}
