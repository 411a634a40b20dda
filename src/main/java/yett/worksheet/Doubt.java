package yett.worksheet;

import static yett.worksheet.Tell.tell;

import java.util.Arrays;
import java.util.Comparator;
import yett.quantity.Unit;

/** Says where a verdict hangs on a number that is not known well enough. */
public final class Doubt {
  /** Standard uncertainties within which 95 of 100 true values lie (JCGM 100, 6.3.3). */
  private static final double COVERAGE = 2;

  private Doubt() {}

  /**
   * The meaning, with a sentence on its end if a result lies nearer to one of its limits than its
   * uncertainty can tell.
   *
   * @param limits in the unit
   */
  public static Meaning said(
      Meaning meaning, Results results, String id, Unit unit, double... limits) {
    double value = results.in(id, unit);
    double u = results.uncertainty(id, unit);
    return Arrays.stream(limits)
        .boxed()
        .min(Comparator.comparingDouble(limit -> Math.abs(limit - value)))
        .filter(limit -> Math.abs(limit - value) < COVERAGE * u)
        .map(
            limit ->
                meaning.and(
                    "With u = "
                        + tell(u, unit)
                        + " that is too near to "
                        + tell(limit, unit)
                        + " to be sure of: measure more exactly before you act on it."))
        .orElse(meaning);
  }
}
