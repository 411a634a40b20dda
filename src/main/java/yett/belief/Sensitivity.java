package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Computes how strongly the belief depends on single numbers of the likelihood rows.
 *
 * <p>One number of a row is changed on the scale of log-odds, and the others of the row are scaled
 * to fit (Laskey, Sensitivity analysis for probability assessments in Bayesian networks, 1995; Chan
 * and Darwiche, When do numbers really matter?, 2002). The derivative of log P(A) - log P(B) is
 * then the posterior mean, under A less under B, of the derivative of the log-likelihood of the
 * answer. It is exact over the listed sets of causes; log-odds over log-odds, so it has no unit:
 * 0.5 means that 1 deciban on the number changes the conclusion by half a deciban.
 *
 * <p>All observations must have been made before any repair.
 */
public final class Sensitivity {

  /**
   * One number of the rule base.
   *
   * @param cause whose row; empty for the row when none of the causes is present
   * @param outcome position of the outcome
   */
  public record Entry(String check, String cause, int outcome) {}

  private final CausalModel model;
  private final int[][] sets;
  private final double[] weights;
  private final Map<String, List<Observation>> groups = new LinkedHashMap<>();

  /**
   * @param belief after the observations
   */
  public Sensitivity(Belief belief, List<Observation> observations) {
    this.model = belief.model();
    Support all = belief.support(1, Integer.MAX_VALUE);
    this.sets = all.sets();
    this.weights = all.weights();
    for (Observation o : observations) {
      groups.computeIfAbsent(model.original(o.check()), c -> new ArrayList<>()).add(o);
    }
  }

  /** Derivatives of the log-odds of a cause, by number; those without influence are left out. */
  public Map<Entry, Double> ofLogOdds(String cause) {
    return along(List.of(logOdds(cause))).get(0);
  }

  /** Derivatives of the log of the ratio of two causes' probabilities, by number. */
  public Map<Entry, Double> ofRatio(String cause, String other) {
    return along(List.of(ratio(cause, other))).get(0);
  }

  /**
   * The same for several causes and one ratio at once, in little more time than for one.
   *
   * @param ratio two causes
   */
  public All of(Collection<String> causes, List<String> ratio) {
    List<double[]> contrasts = new ArrayList<>();
    causes.forEach(cause -> contrasts.add(logOdds(cause)));
    contrasts.add(ratio(ratio.get(0), ratio.get(1)));
    List<Map<Entry, Double>> all = along(contrasts);
    return new All(all.subList(0, causes.size()), all.get(causes.size()));
  }

  /**
   * Derivatives of several log-odds and of a log of a ratio.
   *
   * @param ofLogOdds in the order of the causes
   */
  public record All(List<Map<Entry, Double>> ofLogOdds, Map<Entry, Double> ofRatio) {}

  private double[] logOdds(String cause) {
    int c = model.indexOf(cause);
    double[] contrast = new double[sets.length];
    double[] chances = {0, 0};
    for (int i = 0; i < sets.length; i++) {
      chances[has(i, c)] += weights[i];
    }
    for (int i = 0; i < sets.length; i++) {
      contrast[i] = weights[i] / chances[has(i, c)] * (has(i, c) == 1 ? 1 : -1);
    }
    return contrast;
  }

  private double[] ratio(String cause, String other) {
    double[] contrast = new double[sets.length];
    add(contrast, model.indexOf(cause), 1);
    add(contrast, model.indexOf(other), -1);
    return contrast;
  }

  private void add(double[] contrast, int cause, int sign) {
    double chance = 0;
    for (int i = 0; i < sets.length; i++) {
      chance += has(i, cause) * weights[i];
    }
    for (int i = 0; i < sets.length; i++) {
      contrast[i] += sign * has(i, cause) * weights[i] / chance;
    }
  }

  private int has(int set, int cause) {
    for (int c : sets[set]) {
      if (model.told(c) == cause) {
        return 1;
      }
    }
    return 0;
  }

  private List<Map<Entry, Double>> along(List<double[]> contrasts) {
    List<Map<Entry, Double>> derivatives = new ArrayList<>();
    contrasts.forEach(c -> derivatives.add(new LinkedHashMap<>()));
    groups.forEach(
        (original, observations) -> {
          SharedAnswers answers = new SharedAnswers(model, original, observations);
          alike(answers, contrasts)
              .forEach(
                  (set, weights) ->
                      answers.derivatives(
                          set.causes(),
                          (check, cause, outcome, slope) -> {
                            Entry entry = new Entry(check, cause, outcome);
                            for (int k = 0; k < weights.length; k++) {
                              if (weights[k] != 0) {
                                derivatives.get(k).merge(entry, weights[k] * slope, Double::sum);
                              }
                            }
                          }));
        });
    derivatives.forEach(d -> d.values().removeIf(slope -> Math.abs(slope) < 1e-12));
    return derivatives;
  }

  /**
   * The weights of sets with the same causes among those that show on some answers, added up. Most
   * causes show on few checks, so thousands of sets come down to some dozens.
   */
  private Map<Some, double[]> alike(SharedAnswers answers, List<double[]> contrasts) {
    Map<Some, double[]> alike = new LinkedHashMap<>();
    for (int i = 0; i < sets.length; i++) {
      double[] weights =
          alike.computeIfAbsent(
              new Some(answers.showing(sets[i])), s -> new double[contrasts.size()]);
      for (int k = 0; k < weights.length; k++) {
        weights[k] += contrasts.get(k)[i];
      }
    }
    return alike;
  }

  /** Causes, ascending; equal by content. */
  private record Some(int[] causes) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Some some && Arrays.equals(causes, some.causes);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(causes);
    }
  }
}
