package yett.wording;

import java.util.Optional;
import java.util.OptionalDouble;
import yett.calculation.Trend;
import yett.interview.site.Trends;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Interpretation;
import yett.rules.Judgement;

/** Says how a reading has changed over the years, and when it will leave its usual range. */
public final class TrendWords {
  /** In years. Nobody plans further ahead, and a longer extrapolation is a guess. */
  private static final double AHEAD = 3;

  private final Trends trends;
  private final Judgement usual;

  /**
   * @param usual the usual ranges that the rules give for this gate
   */
  public TrendWords(Trends trends, Judgement usual) {
    this.trends = trends;
    this.usual = usual;
  }

  /** Whether the reading changes, and how fast; empty if there are too few readings. */
  public Optional<String> of(Check check) {
    return trends.of(check).map(t -> trends.words(check, t));
  }

  /** The same, but only if it certainly changes. */
  public Optional<String> sure(Check check) {
    return trends.of(check).filter(t -> t.rises() || t.falls()).map(t -> trends.words(check, t));
  }

  /** When it will leave its usual range at this rate, if that is soon enough to plan for. */
  public Optional<String> warning(Check check) {
    return trends.of(check).flatMap(t -> warning(check, t));
  }

  /**
   * The end of the usual range towards which a trend moves; empty if the range has no end there.
   */
  public OptionalDouble limit(Check check, Trend trend) {
    if (Interpretation.relative(check) && usual.expectation(check.id()).isEmpty()) {
      return OptionalDouble.empty();
    }
    double[] ends = Interpretation.range(check, 0, usual.expectation(check.id()));
    double limit = trend.rises() ? ends[1] : ends[0];
    return Double.isFinite(limit) ? OptionalDouble.of(limit) : OptionalDouble.empty();
  }

  private Optional<String> warning(Check check, Trend trend) {
    OptionalDouble ahead = limit(check, trend);
    if (ahead.isEmpty()) {
      return Optional.empty();
    }
    double limit = ahead.getAsDouble();
    Measures measures = check.measures().orElseThrow();
    return trend
        .until(limit)
        .filter(a -> a.about() <= AHEAD)
        .map(
            a ->
                "at this rate it reaches "
                    + measures.showRounded(limit)
                    + ", the end of its usual range, in about "
                    + months(a.about())
                    + " ("
                    + Math.max(1, Math.round(12 * a.soonest()))
                    + " to "
                    + Math.max(1, Math.round(12 * a.latest()))
                    + ")");
  }

  private static String months(double years) {
    long months = Math.max(1, Math.round(12 * years));
    return months == 1 ? "1 month" : months + " months";
  }
}
