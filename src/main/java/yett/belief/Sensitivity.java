package yett.belief;

import java.util.ArrayList;
import java.util.Arrays;
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
    int c = model.indexOf(cause);
    double[] contrast = new double[sets.length];
    double[] chances = {0, 0};
    for (int i = 0; i < sets.length; i++) {
      chances[has(i, c)] += weights[i];
    }
    for (int i = 0; i < sets.length; i++) {
      contrast[i] = weights[i] / chances[has(i, c)] * (has(i, c) == 1 ? 1 : -1);
    }
    return along(contrast);
  }

  /** Derivatives of the log of the ratio of two causes' probabilities, by number. */
  public Map<Entry, Double> ofRatio(String cause, String other) {
    double[] contrast = new double[sets.length];
    add(contrast, model.indexOf(cause), 1);
    add(contrast, model.indexOf(other), -1);
    return along(contrast);
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
    return Arrays.stream(sets[set]).anyMatch(c -> model.told(c) == cause) ? 1 : 0;
  }

  private Map<Entry, Double> along(double[] contrast) {
    Map<Entry, Double> derivatives = new LinkedHashMap<>();
    groups.forEach(
        (original, observations) -> {
          SharedAnswers answers = new SharedAnswers(model, original, observations);
          for (int i = 0; i < sets.length; i++) {
            if (contrast[i] != 0) {
              double weight = contrast[i];
              answers.derivatives(
                  sets[i],
                  (check, cause, outcome, slope) ->
                      derivatives.merge(
                          new Entry(check, cause, outcome), weight * slope, Double::sum));
            }
          }
        });
    derivatives.values().removeIf(d -> Math.abs(d) < 1e-12);
    return derivatives;
  }
}
