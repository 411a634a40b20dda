package yett.knowledge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Works out the row of a cause on a check from the effects between them, because the belief knows
 * only causes and checks.
 *
 * <p>Given the cause alone, an effect is present by noisy-OR of what leads to it; present effects
 * combine by noisy-MAX, as causes do. This is exact for one cause and one look; the belief works
 * out what further looks at the same effect add. Two causes that lead to one effect are treated as
 * if each had an effect of its own; EffectRowsTest measures that error.
 */
public final class EffectRows {
  /** Most effects of one cause that may lead to others; each can double the work. */
  static final int MOST_LEADING_ON = 12;

  private final Map<String, Effect> effects;

  EffectRows(Map<String, Effect> effects) {
    this.effects = effects;
  }

  /**
   * Gives the checks the rows that follow from effects; a row of a cause's own stays.
   *
   * @param checks cards in this map are replaced by cards with the rows
   */
  void place(Collection<Cause> causes, Map<String, Check> checks) {
    Map<String, Map<String, double[]>> rows = new LinkedHashMap<>();
    for (Cause cause : causes) {
      List<Effect> reached = few(reached(cause.leadsTo()));
      EffectSum sum = new EffectSum(cause.leadsTo(), reached);
      Set<String> shown = new LinkedHashSet<>();
      reached.forEach(effect -> shown.addAll(effect.shows().keySet()));
      for (String name : shown) {
        Check check = checks.get(name);
        if (!check.likelihood().containsKey(cause.id()) && !cause.neverWith(check)) {
          rows.computeIfAbsent(name, n -> new LinkedHashMap<>(check.likelihood()))
              .put(cause.id(), row(sum, reached, check));
        }
      }
    }
    rows.forEach((name, all) -> checks.put(name, checks.get(name).withLikelihood(all)));
  }

  /**
   * The rows of a cause that leads to these effects and has no rows of its own: chances of outcomes
   * by check, in the order in which the effects follow from it. Empty if more effects lead to
   * others than {@link #MOST_LEADING_ON}.
   *
   * @param leadsTo effects, each with its chance
   */
  public Map<String, double[]> rows(Map<String, Double> leadsTo, Map<String, Check> checks) {
    List<Effect> reached = few(reached(leadsTo));
    EffectSum sum = new EffectSum(leadsTo, reached);
    Map<String, double[]> rows = new LinkedHashMap<>();
    for (Effect effect : reached) {
      for (String name : effect.shows().keySet()) {
        rows.computeIfAbsent(name, n -> row(sum, reached, checks.get(n)));
      }
    }
    return rows;
  }

  /**
   * The effects that make up a cause's row on a check, in the order in which they follow from the
   * cause; empty if the cause has no row there, or has a row of its own.
   */
  public List<Effect> behind(Cause cause, Check check) {
    List<Effect> reached = reached(cause.leadsTo());
    List<Effect> showing =
        reached.stream().filter(effect -> effect.shows().containsKey(check.id())).toList();
    double[] row = check.likelihood().get(cause.id());
    EffectSum sum = new EffectSum(cause.leadsTo(), reached);
    boolean own = row == null || showing.isEmpty() || !Arrays.equals(row, row(sum, reached, check));
    return own ? List.of() : showing;
  }

  /**
   * The effects that a cause may have, each after those that lead to it, with its chance when this
   * cause alone is present.
   */
  public Map<Effect, Double> chances(Cause cause) {
    List<Effect> reached = reached(cause.leadsTo());
    Map<Effect, Double> chances = new LinkedHashMap<>();
    EffectSum sum = new EffectSum(cause.leadsTo(), reached);
    for (int e = 0; e < reached.size(); e++) {
      // An effect that is asked about directly shows the first of two outcomes while it is absent.
      double[][] seen = new double[reached.size()][];
      seen[e] = new double[] {0, 1};
      chances.put(reached.get(e), 1 - sum.of(seen, 2)[0]);
    }
    return chances;
  }

  /** Whether more effects of a cause lead to others than {@link #MOST_LEADING_ON}. */
  boolean tooMany(Cause cause) {
    return tooMany(reached(cause.leadsTo()));
  }

  private static boolean tooMany(List<Effect> reached) {
    return reached.stream().filter(e -> !e.leadsTo().isEmpty()).count() > MOST_LEADING_ON;
  }

  private static List<Effect> few(List<Effect> reached) {
    return tooMany(reached) ? List.of() : reached;
  }

  /** Whether an effect leads to another one, directly or through others. */
  boolean leads(Effect from, String to) {
    return reached(from.leadsTo()).stream().anyMatch(effect -> effect.id().equals(to));
  }

  private static double[] row(EffectSum sum, List<Effect> reached, Check check) {
    double[][] rows = new double[reached.size()][];
    for (int e = 0; e < rows.length; e++) {
      double[] row = reached.get(e).shows().get(check.id());
      if (row != null) {
        rows[e] = row.clone();
        for (int y = 1; y < row.length; y++) {
          rows[e][y] += rows[e][y - 1];
        }
      }
    }
    double[] row = sum.of(rows, check.outcomes().size());
    for (int y = row.length - 1; y > 0; y--) {
      row[y] = Math.max(0, row[y] - row[y - 1]); // negative only by rounding
    }
    return row;
  }

  /**
   * The effects reached, each after those that lead to it; only part of them if there is a loop,
   * which is reported as a problem elsewhere.
   */
  private List<Effect> reached(Map<String, Double> leadsTo) {
    List<Effect> reached = new ArrayList<>();
    follow(leadsTo, new HashSet<>(), reached);
    return reached;
  }

  private void follow(Map<String, Double> leadsTo, Set<String> seen, List<Effect> reached) {
    for (String next : leadsTo.keySet()) {
      Effect effect = effects.get(next);
      if (effect != null && seen.add(next)) {
        follow(effect.leadsTo(), seen, reached);
        reached.add(0, effect);
      }
    }
  }
}
