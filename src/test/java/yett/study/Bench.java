package yett.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import yett.belief.CausalModel;
import yett.interview.Expertise;
import yett.knowledge.Cause;
import yett.knowledge.RuleBase;
import yett.rules.RuleCache;
import yett.study.gate.SimulatedGate;

/** Plays the same simulated faults under every policy. */
final class Bench {
  /** On the usual site the batteries are there, and what needs a site without them is not. */
  private static final Map<String, Double> USUAL_SITE = Map.of("power-lost", 0.0);

  private final Expertise expertise;
  private final RuleCache cache;
  private final CausalModel model;

  Bench(Expertise expertise, RuleCache cache) {
    this.expertise = expertise;
    this.cache = cache;
    this.model = expertise.model().withOdds(USUAL_SITE);
  }

  /** The policies, made anew for every case. */
  List<Policy> policies(long seed) {
    List<Policy> all = new ArrayList<>();
    all.add(new Yett(expertise.planner()));
    all.add(new FlowChart());
    for (RuleOfThumb.Order order : RuleOfThumb.Order.values()) {
      all.add(new RuleOfThumb(expertise.base(), expertise.planner(), order, seed));
    }
    return all;
  }

  /** A gate drawn from the model. */
  FaultyGate drawn(long seed) {
    Set<String> truth =
        DrawnGate.draw(expertise.base(), model, USUAL_SITE, new Random(31 * seed + 7));
    return new DrawnGate(expertise.base(), model, truth, seed);
  }

  /** A gate of physics; how often each fault occurs is as the cards say. */
  FaultyGate physical(long seed) {
    Map<String, Double> often = new LinkedHashMap<>();
    expertise.base().causes().forEach((id, cause) -> often.put(id, cause.prior()));
    return SimulatedGate.of(seed, often);
  }

  /**
   * Plays so many cases from a first seed on under each policy.
   *
   * @param gates makes the same gate anew from a seed
   * @return by policy, the cases in their order
   */
  Map<String, List<Played>> play(
      LongFunction<FaultyGate> gates, long first, int many, IntConsumer progress) {
    return play(gates, this::policies, first, many, progress);
  }

  /** The same under some policies. */
  Map<String, List<Played>> play(
      LongFunction<FaultyGate> gates,
      LongFunction<List<Policy>> policies,
      long first,
      int many,
      IntConsumer progress) {
    AtomicInteger done = new AtomicInteger();
    List<List<Played>> byCase =
        LongStream.range(first, first + many)
            .parallel()
            .mapToObj(
                seed -> {
                  try (Play.Seat seat = new Play.Seat(expertise)) {
                    List<Played> played =
                        policies.apply(seed).stream()
                            .map(p -> Play.of(seat, gates.apply(seed), p))
                            .toList();
                    progress.accept(done.incrementAndGet());
                    return played;
                  }
                })
            .toList();
    Map<String, List<Played>> byPolicy = new LinkedHashMap<>();
    List<Policy> names = policies.apply(0);
    for (int p = 0; p < names.size(); p++) {
      int at = p;
      byPolicy.put(names.get(p).name(), byCase.stream().map(c -> c.get(at)).toList());
    }
    return byPolicy;
  }

  /** Causes that a rule base can do without: all but the two that are always there. */
  List<String> removable() {
    return expertise.base().causes().keySet().stream()
        .filter(c -> !c.equals(Cause.NOT_IN_RULE_BASE) && !c.equals(Cause.NOTHING_WRONG))
        .filter(c -> USUAL_SITE.getOrDefault(c, 1.0) > 0)
        .toList();
  }

  /**
   * What Yett makes of gates with a cause, and what that brings about, when its card is missing.
   */
  List<Played> without(String cause, long seed, int many) {
    RuleBase base = Reduced.without(expertise.base(), cause);
    Expertise less = Expertise.of(base, cache);
    return LongStream.range(seed, seed + many)
        .parallel()
        .mapToObj(
            s -> {
              Set<String> truth =
                  new HashSet<>(
                      DrawnGate.withConsequences(
                          expertise.base(), Set.of(cause), USUAL_SITE, new Random(31 * s + 7)));
              FaultyGate gate = new DrawnGate(expertise.base(), model, truth, s);
              try (Play.Seat seat = new Play.Seat(less)) {
                return Play.of(seat, gate, new Yett(less.planner()));
              }
            })
        .toList();
  }
}
