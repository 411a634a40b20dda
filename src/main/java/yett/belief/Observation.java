package yett.belief;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The evidence in an answer about the machine as it is when the answer is given.
 *
 * @param check the check that was answered
 * @param weights for each outcome, the chance of this answer if that were the true outcome: 1 and 0
 *     for a certain answer, shares for a reading near a band limit, smaller differences for an
 *     unreliable witness
 * @param ticks what was seen besides the outcome that shows; empty for a single outcome
 */
public record Observation(String check, List<Double> weights, Optional<Ticks> ticks) {

  public Observation {
    weights = List.copyOf(weights);
  }

  public Observation(String check, List<Double> weights) {
    this(check, weights, Optional.empty());
  }

  /** A certain answer: outcome number {@code outcome} of {@code outcomes}. */
  public static Observation of(String check, int outcome, int outcomes) {
    List<Double> weights = new ArrayList<>(Collections.nCopies(outcomes, 0.0));
    weights.set(outcome, 1.0);
    return new Observation(check, weights);
  }

  /**
   * A certain answer of several outcomes that are true at once: the highest one shows, and
   * something contributes each of the others.
   *
   * @param seen positions of the outcomes, in any order
   */
  public static Observation several(String check, List<Integer> seen, int outcomes) {
    int highest = Collections.max(seen);
    Observation one = of(check, highest, outcomes);
    return one.with(Ticks.of(seen, 1));
  }

  /** A copy with what was seen besides. */
  public Observation with(Optional<Ticks> others) {
    return new Observation(check, weights, others);
  }

  /**
   * Outcomes that were seen at once.
   *
   * @param highest the one that shows
   * @param others the others, rising; all are below the highest and above the ordinary one
   * @param counts how much of the weight of the highest is the chance of an answer in which the
   *     others are meant; in the rest of it they say nothing
   */
  public record Ticks(int highest, List<Integer> others, double counts) {
    public Ticks {
      others = List.copyOf(others);
      if (others.isEmpty()
          || others.get(0) < 1
          || others.get(others.size() - 1) >= highest
          || others.stream().distinct().count() < others.size()) {
        throw new IllegalArgumentException(
            "outcomes " + others + " cannot be seen besides outcome " + highest);
      }
    }

    /**
     * What a person said. As no answer makes anything impossible, there is room for a slip: the
     * same cause may show in two ways.
     *
     * @param weights of the answer, for each outcome
     */
    public static Optional<Ticks> said(int highest, List<Integer> others, List<Double> weights) {
      List<Integer> all = new ArrayList<>(others);
      all.add(highest);
      return of(all, weights.get(highest) * (1 - CardModel.SLIP));
    }

    /**
     * @param seen positions, in any order; of one outcome there are no ticks
     * @throws IllegalArgumentException if the ordinary outcome is among several
     */
    public static Optional<Ticks> of(List<Integer> seen, double counts) {
      List<Integer> rising = seen.stream().distinct().sorted().toList();
      int last = rising.size() - 1;
      return last < 1
          ? Optional.empty()
          : Optional.of(new Ticks(rising.get(last), rising.subList(0, last), counts));
    }
  }
}
