package yett.practice;

import java.util.Arrays;
import java.util.Optional;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Instruments;
import yett.knowledge.Measures;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;

/**
 * Draws readings that an outcome would give. The true value is somewhere in the band and stays the
 * same. Instrument and procedure add a new random error each time, with the standard uncertainty
 * that the rules use for a reading.
 */
record Readings(Noise noise) {
  /**
   * Reach of an open band whose neighbour is open too, as a share of its limit; considered
   * judgement.
   */
  private static final double SHARE_OF_LIMIT = 0.1;

  private static final double UNCERTAINTIES = 6;

  /**
   * A reading; or the outcome in words if its band cannot occur on this gate.
   *
   * @param time 0 for the first time it is read
   */
  Answer read(Check check, int outcome, Optional<Expectation> usual, int time) {
    boolean placed = !Interpretation.relative(check) || usual.isPresent();
    if (!placed) {
      return new Answer.Chosen(check.outcomes().get(outcome).id());
    }
    return around(check, value(check, outcome, usual), time);
  }

  /** A reading of this value. */
  Answer around(Check check, double value, int time) {
    Measures measures = check.measures().orElseThrow();
    double scatter =
        Instruments.uncertainty(measures, value) * noise.normal(check.id() + " read " + time);
    double read = Math.min(measures.most(), Math.max(measures.least(), value + scatter));
    String typed = measures.showRounded(Instruments.rounded(measures, read));
    return new Answer.Read(typed, measures.parse(typed));
  }

  private double value(Check check, int outcome, Optional<Expectation> usual) {
    double[][] bands = new double[check.outcomes().size()][];
    for (int i = 0; i < bands.length; i++) {
      bands[i] = Interpretation.range(check, i, usual);
    }
    Measures measures = check.measures().orElseThrow();
    double[] band = bands[outcome];
    double low = band[0];
    double high = band[1];
    if (Double.isInfinite(low)) {
      low = Math.max(Math.min(measures.least(), high), high - reach(bands, high, measures));
    }
    if (Double.isInfinite(high)) {
      high = Math.min(Math.max(measures.most(), low), low + reach(bands, low, measures));
    }
    // The mean of two uniform numbers is more often near the middle of the band than near its ends.
    String what = check.id() + " value " + outcome;
    return low + (high - low) * (noise.even(what) + noise.even(what + " again")) / 2;
  }

  /** How far an open band reaches beyond its limit: as far as the band next to it is wide. */
  private static double reach(double[][] bands, double limit, Measures measures) {
    return Arrays.stream(bands)
        .filter(b -> b[0] == limit || b[1] == limit)
        .mapToDouble(b -> b[1] - b[0])
        .filter(Double::isFinite)
        .findFirst()
        .orElse(
            Math.max(
                SHARE_OF_LIMIT * Math.abs(limit),
                UNCERTAINTIES * Instruments.uncertainty(measures, limit)));
  }
}
