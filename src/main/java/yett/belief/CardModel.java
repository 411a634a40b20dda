package yett.belief;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Makes the causal model from the cards of a rule base. */
public final class CardModel {
  /**
   * Share of every row that is spread evenly over the outcomes. Anybody may look at the wrong lamp,
   * so no answer makes a cause impossible.
   */
  static final double SLIP = 0.005;

  /**
   * Expected number of independent causes at a reported gate: about one gate in eight has a second
   * one. Priors on cards are shares of call-outs and may add up to more than 1; used unscaled as
   * independent chances, they would give every gate several faults.
   */
  static final double AT_ONCE = 1.15;

  private CardModel() {}

  /** With all causes. */
  public static CausalModel of(RuleBase base) {
    return of(base, CardEffects.of(base), Set.of());
  }

  /**
   * The model for gates at which some causes cannot be present.
   *
   * @param effects the rows that follow from effects
   * @param impossible these causes; they keep their positions in the model, with chance 0
   */
  static CausalModel of(RuleBase base, CardEffects effects, Set<String> impossible) {
    CausalModel.Builder builder = CausalModel.builder();
    List<Cause> possible =
        base.causes().values().stream().filter(c -> !impossible.contains(c.id())).toList();
    double scale = scale(possible.stream().mapToDouble(Cause::prior).toArray());
    Unknown unknown = new Unknown(possible);
    for (Cause cause : base.causes().values()) {
      double prior = unknown.share(cause) * scaled(cause.prior(), scale);
      builder.cause(cause.id(), impossible.contains(cause.id()) ? 0 : prior);
    }
    for (Cause cause : unknown.known()) {
      double prior = scaled(base.causes().get(Cause.NOT_IN_RULE_BASE).prior(), scale);
      builder.kind(Cause.NOT_IN_RULE_BASE, Unknown.like(cause), unknown.shareLike(cause) * prior);
    }
    for (Cause cause : possible) {
      cause
          .consequences()
          .forEach(
              (to, chance) -> {
                if (!impossible.contains(to)) {
                  builder.link(cause.id(), to, chance);
                }
              });
    }
    base.checks()
        .values()
        .forEach(c -> builder.check(c.id(), slip(c.otherwise()), rows(c, unknown)));
    Set<String> doubled = unknown.known().stream().map(Cause::id).collect(Collectors.toSet());
    effects.into(builder, doubled, SLIP);
    for (Check check : base.checks().values()) {
      check
          .repeats()
          .ifPresent(
              r ->
                  builder.repeats(
                      check.id(),
                      r.check(),
                      r.share(),
                      sameOutcomes(base.checks().get(r.check()), check)));
    }
    return builder.build();
  }

  /**
   * The factor on the odds of all priors with which, given at least one cause, the expected number
   * is at most {@link #AT_ONCE}.
   */
  static double scale(double[] priors) {
    double low = 0;
    double high = 1;
    if (expected(priors, high) <= AT_ONCE) {
      return high;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (expected(priors, middle) > AT_ONCE) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  private static double expected(double[] priors, double scale) {
    double sum = 0;
    double none = 1;
    for (double p : priors) {
      sum += scaled(p, scale);
      none *= 1 - scaled(p, scale);
    }
    return sum > 0 ? sum / (1 - none) : 0;
  }

  private static double scaled(double prior, double scale) {
    return scale * prior / (1 - prior + scale * prior);
  }

  private static Map<String, double[]> rows(Check check, Unknown unknown) {
    Map<String, double[]> rows = new LinkedHashMap<>();
    check.likelihood().forEach((cause, row) -> rows.put(cause, slip(row)));
    if (!check.danger() && check.kind() != Check.Kind.PROOF) {
      unknown.rows(check).forEach((kind, row) -> rows.putIfAbsent(kind, slip(row)));
    }
    return rows;
  }

  private static double[] slip(double[] row) {
    double[] mixed = new double[row.length];
    Arrays.setAll(mixed, outcome -> withSlips(row[outcome], row.length));
    return mixed;
  }

  /** The chance of an outcome with the share {@link #SLIP} for wrong observations. */
  static double withSlips(double chance, int outcomes) {
    return (1 - SLIP) * chance + SLIP / outcomes;
  }

  private static int[] sameOutcomes(Check original, Check repetition) {
    List<Check.Outcome> outcomes = original.outcomes();
    return outcomes.stream().mapToInt(o -> repetition.indexOf(o.id())).toArray();
  }
}
