package yett.wording;

import java.util.Optional;
import yett.interview.Moment;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/** The usual range of a reading, in a few words and without its reason. */
public final class UsualRangeWords {
  private UsualRangeWords() {}

  /** On this gate; empty if nothing is known of it. */
  public static Optional<String> of(Moment moment, Check check) {
    if (!check.measured()) {
      return Optional.empty();
    }
    Measures measures = check.measures().orElseThrow();
    return moment
        .judgement()
        .expectation(check.id())
        .map(e -> inOrder(check, e))
        .map(e -> words(measures, e[0], e[1]))
        .or(
            () ->
                Optional.of(check.outcomes().get(0))
                    .filter(o -> o.band().isPresent() && !o.band().get().relative())
                    .map(Check.Outcome::text));
  }

  /**
   * What is expected, and beyond it what is still in order: a limit may be met by twice what it
   * allows, as it is read so roughly.
   */
  private static double[] inOrder(Check check, Expectation usual) {
    double[] band = Interpretation.range(check, 0, Optional.of(usual));
    return new double[] {
      Double.isFinite(band[0]) ? Math.min(band[0], usual.low()) : usual.low(),
      Double.isFinite(band[1]) ? Math.max(band[1], usual.high()) : usual.high()
    };
  }

  /** On this gate, with how it follows and whose word that is. */
  public static String reasoned(Check check, Expectation expectation) {
    return words(check.measures().orElseThrow(), expectation.low(), expectation.high())
        + " on this gate: "
        + expectation.how()
        + " ("
        + expectation.reason().source()
        + ")";
  }

  /**
   * @param low minus infinity if there is no lower end
   * @param high infinity if there is no upper end
   */
  public static String words(Measures measures, double low, double high) {
    if (Double.isInfinite(low)) {
      return "up to " + measures.showRounded(high);
    }
    return Double.isInfinite(high)
        ? measures.showRounded(low) + " or more"
        : measures.showRounded(low) + " to " + measures.showRounded(high);
  }
}
