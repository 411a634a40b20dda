package yett.wording;

import java.util.Optional;
import yett.interview.moment.Moment;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/** Says the usual range of a reading in a few words, without its reason. */
public final class UsualRangeWords {
  private UsualRangeWords() {}

  /** The usual range on this gate; empty if nothing is known of it. */
  public static Optional<String> of(Moment moment, Check check) {
    return of(check, moment.judgement().expectation(check.id()));
  }

  /** The range by which an answer was judged; a repair may have changed it since. */
  public static Optional<String> of(Moment moment, Check check, long event) {
    return of(check, moment.judgement().expectation(check.id(), event));
  }

  private static Optional<String> of(Check check, Optional<Expectation> usual) {
    if (!check.measured()) {
      return Optional.empty();
    }
    Measures measures = check.measures().orElseThrow();
    return usual
        .map(e -> words(measures, e.low(), e.high()) + inOrder(check, e))
        .or(
            () ->
                Optional.of(check.outcomes().get(0))
                    .filter(o -> o.band().isPresent() && !o.band().get().relative())
                    .map(Check.Outcome::text));
  }

  /**
   * What else is still in order outside the usual range, as an addition to it; empty if nothing is.
   * A reading with a large uncertainty may be in order at up to twice a limit.
   */
  private static String inOrder(Check check, Expectation usual) {
    Measures measures = check.measures().orElseThrow();
    double[] band = Interpretation.range(check, 0, Optional.of(usual));
    String low = measures.showRounded(usual.low());
    String high = measures.showRounded(usual.high());
    StringBuilder more = new StringBuilder();
    if (Double.isFinite(band[0])
        && band[0] < usual.low()
        && !low.equals(measures.showRounded(band[0]))) {
      more.append(", in order from ").append(measures.showRounded(band[0]));
    }
    if (Double.isFinite(band[1])
        && band[1] > usual.high()
        && !high.equals(measures.showRounded(band[1]))) {
      more.append(more.isEmpty() ? ", in order up to " : " to ");
      more.append(measures.showRounded(band[1]));
    }
    return more.toString();
  }

  /** The usual range on this gate, with how it was derived and from which source. */
  public static String reasoned(Check check, Expectation expectation) {
    return words(check.measures().orElseThrow(), expectation.low(), expectation.high())
        + inOrder(check, expectation)
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
