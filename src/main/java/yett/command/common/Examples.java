package yett.command.common;

import java.util.Optional;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/** Readings that show how one is typed: such as the gate in hand could well give. */
final class Examples {
  /** A range wider than so many of its uncertainties is read over decades. */
  private static final double DECADES = 1e5;

  /** Of a range without an upper end, so much of its lower end is well in it. */
  private static final double JUST_INSIDE = 1.2;

  private Examples() {}

  /** An ordinary reading: the middle of its range, or just inside the only end that it has. */
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

  /** The middle of what can be read; of a range over decades, what is read at its low end. */
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
