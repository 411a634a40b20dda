package yett.interview.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yett.belief.Belief;
import yett.belief.Observation;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/** The possible outcomes of a check and the belief after each. */
public final class Prospects {
  private static final double NOT_TOO_RARE = 0.02;

  private Prospects() {}

  /**
   * @param chance of this outcome at present
   * @param range the readings that count as this outcome; empty where it is not measured or cannot
   *     be placed on this gate
   * @param then chance after it that each cause was present at the call-out, in the order of the
   *     model
   * @param left chance after it that each cause is still present, given the repairs done
   * @param chance of this outcome, as things stand
   */
  public record Prospect(
      Check.Outcome outcome, double chance, String range, double[] then, double[] left) {}

  public static List<Prospect> of(Belief belief, Check check, Optional<Expectation> expectation) {
    double[] chances = belief.predict(check.id());
    List<Prospect> prospects = new ArrayList<>();
    for (int i = 0; i < chances.length; i++) {
      Observation seen = Observation.of(check.id(), i, chances.length);
      Belief then = chances[i] > 0 ? belief.learn(seen) : belief;
      prospects.add(
          new Prospect(
              check.outcomes().get(i),
              chances[i],
              range(check, i, expectation),
              then.atCallOut(),
              then.remaining()));
    }
    return prospects;
  }

  /** The readings of an outcome on this gate; empty where no usual range places them. */
  public static String range(Check check, int outcome, Optional<Expectation> expectation) {
    boolean placed = !Interpretation.relative(check) || expectation.isPresent();
    if (check.measures().isEmpty() || !placed) {
      return "";
    }
    Measures measures = check.measures().get();
    double[] ends = Interpretation.range(check, outcome, expectation);
    if (Double.isInfinite(ends[0])) {
      return "below " + measures.showRounded(ends[1]);
    }
    return Double.isInfinite(ends[1])
        ? "above " + measures.showRounded(ends[0])
        : measures.showRounded(ends[0]) + " to " + measures.showRounded(ends[1]);
  }

  /**
   * The causes whose chance a check would change most: largest spread of their chance over the
   * outcomes, weighted by the chance of each outcome.
   *
   * @return positions in the model, the most changed first
   */
  public static List<Integer> separates(Belief belief, List<Prospect> prospects, int most) {
    double[] now = belief.atCallOut();
    double[] moved = new double[now.length];
    for (Prospect prospect : prospects) {
      for (int c = 0; c < moved.length; c++) {
        moved[c] += prospect.chance() * Math.abs(prospect.then()[c] - now[c]);
      }
    }
    return IntStream.range(0, moved.length)
        .boxed()
        .filter(c -> moved[c] > 0.005)
        .sorted((a, b) -> Double.compare(moved[b], moved[a]))
        .limit(most)
        .toList();
  }

  /**
   * The outcome that would speak most against a cause.
   *
   * @param chance of this outcome
   * @param then chance of the cause after it
   */
  public record Doubt(Check check, Check.Outcome outcome, double chance, double then) {}

  /**
   * Among the outcomes of some checks that are not too rare, the one that would lower the chance of
   * a cause most; empty if none would lower it by a hundredth.
   */
  public static Optional<Doubt> doubt(Belief belief, List<Check> checks, int cause) {
    double now = belief.atCallOut()[cause];
    return checks.stream()
        .flatMap(
            check -> of(belief, check, Optional.empty()).stream().map(p -> doubt(check, p, cause)))
        .filter(d -> d.chance() >= NOT_TOO_RARE && d.then() < now - 0.01)
        .min(Comparator.comparingDouble(Doubt::then));
  }

  private static Doubt doubt(Check check, Prospect prospect, int cause) {
    return new Doubt(check, prospect.outcome(), prospect.chance(), prospect.then()[cause]);
  }
}
