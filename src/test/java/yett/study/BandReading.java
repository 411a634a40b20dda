package yett.study;

import java.util.Optional;
import java.util.Random;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Instruments;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/** A reading that an outcome of a measured check would give. */
public final class BandReading {
  private BandReading() {}

  /**
   * Somewhere in the band of the outcome, and off by the error of instrument and procedure.
   *
   * @param usual what the rules take to be usual on this gate, if they say; without it a band that
   *     depends on it cannot be told
   */
  public static Answer of(Check check, int outcome, Optional<Expectation> usual, Random random) {
    if (Interpretation.relative(check) && usual.isEmpty()) {
      return new Answer.CannotTell();
    }
    Measures measures = check.measures().orElseThrow();
    double[] ends = Interpretation.range(check, outcome, usual);
    double limit = Double.isInfinite(ends[0]) ? ends[1] : ends[0];
    double reach = Math.max(Math.abs(limit) / 2, 6 * Instruments.uncertainty(measures, limit));
    double low = Math.max(measures.least(), Double.isInfinite(ends[0]) ? limit - reach : ends[0]);
    double high = Math.min(measures.most(), Double.isInfinite(ends[1]) ? limit + reach : ends[1]);
    return read(measures, low + random.nextDouble() * (high - low), random);
  }

  /** A value with the scatter of instrument and procedure. */
  public static Answer read(Measures measures, double value, Random random) {
    double error = Instruments.uncertainty(measures, value) * random.nextGaussian();
    double read = Math.min(Math.max(value + error, measures.least()), measures.most());
    return new Answer.Read(measures.show(read), read);
  }
}
