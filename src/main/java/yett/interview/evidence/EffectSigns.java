package yett.interview.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.belief.Decibans;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.RuleBase;

/**
 * What was seen of an effect that a cause has. It explains the belief and adds no evidence: the
 * belief uses the rows worked out from effects.
 *
 * @param chance of the effect when its cause alone is present
 * @param seen looks that show it, the strongest first
 * @param ordinary looks that would show it and do not, the strongest first
 */
public record EffectSigns(Effect effect, double chance, List<Sign> seen, List<Sign> ordinary) {
  /** Chance from which an effect is expected with its cause. */
  private static final double EXPECTED = 0.5;

  /** Chance below which an effect of a cause is not mentioned. */
  private static final double SELDOM = 0.05;

  /** Smallest weight (decibans) that counts as a sign. */
  private static final double LEAST = 1;

  /**
   * A look and what it showed.
   *
   * @param decibans by how much the effect makes this outcome likelier than it is on a sound gate;
   *     negative if less likely
   */
  public record Sign(Check check, String outcome, double decibans) {}

  /** Whether the cause has this effect more often than not. */
  public boolean expected() {
    return chance >= EXPECTED;
  }

  /**
   * The effects of a cause of which something was seen, the strongest first; then the expected
   * effects that were looked for without being seen. A look that shows several effects belongs to
   * the one that most likely produced it. Only the first look at each check counts. Complaints that
   * nobody made do not count, nor does a look about which the cause's own row says the opposite of
   * its effect.
   */
  public static List<EffectSigns> of(Cause cause, Trail trail, RuleBase base) {
    Map<Effect, Double> chances = base.effectRows().chances(cause);
    chances.values().removeIf(chance -> chance < SELDOM);
    Map<Effect, EffectSigns> all = new LinkedHashMap<>();
    chances.forEach(
        (e, p) -> all.put(e, new EffectSigns(e, p, new ArrayList<>(), new ArrayList<>())));
    looks(trail, base)
        .forEach(
            (check, outcome) -> {
              Map<Effect, Sign> signs = signs(cause, check, outcome, chances);
              signs.forEach(
                  (effect, sign) -> {
                    if (sign.decibans() < 0) {
                      all.get(effect).ordinary.add(sign);
                    }
                  });
              likeliest(signs, chances).ifPresent(e -> all.get(e).seen.add(signs.get(e)));
            });
    List<EffectSigns> told = new ArrayList<>();
    all.values().stream()
        .filter(s -> !s.seen.isEmpty())
        .sorted(Comparator.comparingDouble(s -> -sum(s.seen)))
        .forEach(told::add);
    all.values().stream()
        .filter(s -> s.expected() && s.seen.isEmpty() && !s.ordinary.isEmpty())
        .sorted(Comparator.comparingDouble(s -> sum(s.ordinary)))
        .forEach(told::add);
    return told.stream().map(EffectSigns::sorted).toList();
  }

  /** The outcome that each check showed first, in the order of the answers. */
  private static Map<Check, Integer> looks(Trail trail, RuleBase base) {
    Map<Check, Integer> looks = new LinkedHashMap<>();
    for (Trail.Move move : trail.moves()) {
      Check check = base.checks().get(move.subject());
      int outcome = check == null ? -1 : check.indexOf(move.words());
      boolean unsaid =
          check != null && check.kind() == Check.Kind.COMPLAINT && !move.words().equals(Check.SAID);
      if (outcome >= 0 && !unsaid) {
        looks.putIfAbsent(check, outcome);
      }
    }
    return looks;
  }

  /** The sign that a look gives for each effect that would show in it. */
  private static Map<Effect, Sign> signs(
      Cause cause, Check check, int outcome, Map<Effect, Double> effects) {
    Map<Effect, Sign> signs = new LinkedHashMap<>();
    double[] row = check.likelihood().getOrDefault(cause.id(), check.otherwise());
    double byCause = decibans(row, check, outcome);
    for (Effect effect : effects.keySet()) {
      double[] shown = effect.shows().get(check.id());
      double byEffect = shown == null ? 0 : decibans(shown, check, outcome);
      if (Math.abs(byEffect) >= LEAST && byEffect * byCause > 0) {
        signs.put(effect, new Sign(check, check.outcomes().get(outcome).id(), byEffect));
      }
    }
    return signs;
  }

  private static Optional<Effect> likeliest(Map<Effect, Sign> signs, Map<Effect, Double> chances) {
    return signs.keySet().stream()
        .filter(e -> signs.get(e).decibans() > 0)
        .max(
            Comparator.comparingDouble(
                e -> {
                  Sign sign = signs.get(e);
                  Check check = sign.check();
                  return chances.get(e) * e.shows().get(check.id())[check.indexOf(sign.outcome())];
                }));
  }

  private static double decibans(double[] row, Check check, int outcome) {
    return Decibans.ofSeeing(row[outcome], check.otherwise()[outcome], row.length);
  }

  private static double sum(List<Sign> signs) {
    return signs.stream().mapToDouble(Sign::decibans).sum();
  }

  private EffectSigns sorted() {
    Comparator<Sign> telling = Comparator.comparingDouble(s -> -Math.abs(s.decibans()));
    return new EffectSigns(
        effect,
        chance,
        seen.stream().sorted(telling).toList(),
        ordinary.stream().sorted(telling).toList());
  }
}
