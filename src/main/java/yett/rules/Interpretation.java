package yett.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import yett.calculation.BandWeights;
import yett.knowledge.Band;
import yett.knowledge.Check;
import yett.knowledge.Instruments;
import yett.knowledge.Role;
import yett.rules.Conclusion.Expectation;

/** Works out weights of outcomes from answers; called from the consequences of rules. */
public final class Interpretation {
  private Interpretation() {}

  /**
   * Weights of a reported outcome. If people of this role sometimes report it wrongly, the other
   * outcomes get a share.
   */
  public static List<Double> ofOutcome(Check check, String outcome, Role by) {
    int size = check.outcomes().size();
    double right = check.reliability().getOrDefault(by, 1.0);
    double wrong = size > 1 ? (1 - right) / (size - 1) : 0;
    List<Double> weights = new ArrayList<>(Collections.nCopies(size, wrong));
    weights.set(check.indexOf(outcome), right);
    return List.copyOf(weights);
  }

  /** Whether an answer is the one furthest down the card of all that were given together. */
  public static boolean isHighest(Check check, Fact.Given given) {
    int at = check.indexOf(given.outcome());
    return given.also().stream().allMatch(o -> check.indexOf(o) < at);
  }

  /** The other outcomes of an answer, in the order of the card. */
  public static List<String> also(Check check, Fact.Given given) {
    return check.outcomes().stream().map(Check.Outcome::id).filter(given.also()::contains).toList();
  }

  /**
   * Weights of a reading over the bands, from its standard uncertainty.
   *
   * @param low lower end of the usual range, NaN if the bands need none
   * @param high upper end of it, likewise
   */
  public static List<Double> ofReading(Check check, double value, double low, double high) {
    double uncertainty = Instruments.uncertainty(check.measures().orElseThrow(), value);
    List<Integer> rising =
        IntStream.range(0, check.outcomes().size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> limit(band(check, i).low(), low, high)))
            .toList();
    double[] limits =
        rising.stream().skip(1).mapToDouble(i -> limit(band(check, i).low(), low, high)).toArray();
    double[] weights = BandWeights.of(value, uncertainty, limits);
    Double[] byOutcome = new Double[weights.length];
    for (int i = 0; i < weights.length; i++) {
      byOutcome[rising.get(i)] = weights[i];
    }
    return List.of(byOutcome);
  }

  private static Band band(Check check, int outcome) {
    return check.outcomes().get(outcome).band().orElseThrow();
  }

  /** The outcome with the largest weight. */
  public static String likeliest(Check check, List<Double> weights) {
    int best = 0;
    for (int i = 1; i < weights.size(); i++) {
      if (weights.get(i) > weights.get(best)) {
        best = i;
      }
    }
    return check.outcomes().get(best).id();
  }

  private static double limit(Band.Limit limit, double low, double high) {
    if (limit instanceof Band.Fixed fixed) {
      return fixed.value();
    }
    if (limit instanceof Band.Expected expected) {
      return expected.factor() * (expected.high() ? high : low);
    }
    return limit == Band.Unbounded.BELOW ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
  }

  /**
   * The range of readings that counts as an outcome, in the canonical unit.
   *
   * @param usual range on this gate; without it a band that depends on it has no numbers
   * @return lower and upper limit, infinite where there is none
   */
  public static double[] range(Check check, int outcome, Optional<Expectation> usual) {
    double low = usual.map(Expectation::low).orElse(Double.NaN);
    double high = usual.map(Expectation::high).orElse(Double.NaN);
    Band band = band(check, outcome);
    return new double[] {limit(band.low(), low, high), limit(band.high(), low, high)};
  }

  /** Whether the bands of a measured check depend on the usual range. */
  public static boolean relative(Check check) {
    return check.outcomes().stream()
        .map(Check.Outcome::band)
        .flatMap(Optional::stream)
        .anyMatch(Band::relative);
  }

  /** Weights of a complaint that was not made although it was asked for. */
  public static List<Double> unsaid(Check complaint) {
    return List.of(1.0, complaint.unmentioned());
  }

  /** Whether a site answer contradicts a card's conditions. */
  public static boolean rulesOut(Map<String, List<String>> onlyIf, Fact.Site site) {
    List<String> wanted = onlyIf.get(site.question());
    return wanted != null && !wanted.contains(site.choice());
  }
}
