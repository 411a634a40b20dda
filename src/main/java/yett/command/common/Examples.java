package yett.command.common;

import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/** Example readings that show how to type one, with values that this gate could well have. */
final class Examples {
  /**
   * If a range is wider than this many times its uncertainty, readings in it can differ by powers
   * of ten.
   */
  private static final double DECADES = 1e5;

  /** For a range without an upper end, the example is its lower end times this factor. */
  private static final double JUST_INSIDE = 1.2;

  private Examples() {}

  /**
   * An ordinary reading: the middle of its range, or a value just inside if the range has only one
   * end.
   */
  static String of(Check check, Measures measures, Optional<Expectation> usual) {
    if (usual.isEmpty() && Interpretation.relative(check)) {
      return of(measures);
    }
    double[] ends = Interpretation.range(check, 0, usual);
    double low = Math.max(ends[0], measures.least());
    double high = Math.min(ends[1], measures.most());
    if (usual.isPresent()) {
      low = Math.max(low, usual.get().low());
      high = Math.min(high, usual.get().high());
    }
    return measures.showRounded(
        Double.isInfinite(ends[1]) && usual.isEmpty()
            ? Math.min(high, low * JUST_INSIDE)
            : (low + high) / 2);
  }

  /**
   * The middle of what can be read. In a range over many powers of ten, a value near its low end.
   */
  private static String of(Measures measures) {
    double span = measures.most() - measures.least();
    double unsure = measures.procedureUncertainty();
    if (!Double.isFinite(span)) {
      return measures.show(1);
    }
    boolean decades = unsure > 0 && span > DECADES * unsure;
    return measures.show(measures.least() + (decades ? 10 * unsure : span / 2));
  }
}
