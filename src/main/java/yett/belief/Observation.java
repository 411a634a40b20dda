package yett.belief;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The evidence in an answer about the machine as it is when the answer is given.
 *
 * @param check the check that was answered
 * @param weights for each outcome, the chance of this answer if that were the true outcome: 1 and 0
 *     for a certain answer, shares for a reading near a band limit, smaller differences for an
 *     unreliable witness
 */
public record Observation(String check, List<Double> weights) {

  public Observation {
    weights = List.copyOf(weights);
  }

  /** A certain answer: outcome number {@code outcome} of {@code outcomes}. */
  public static Observation of(String check, int outcome, int outcomes) {
    List<Double> weights = new ArrayList<>(Collections.nCopies(outcomes, 0.0));
    weights.set(outcome, 1.0);
    return new Observation(check, weights);
  }
}
