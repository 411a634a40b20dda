package yett.calculation;

/**
 * Insulation resistance to earth of a buried loop or cable, read at 500 V of direct current, in
 * ohm.
 */
public final class Insulation {
  /** A new loop: good practice of loop installers, and from memory of ASTM E2561. */
  public static final double NEW_GOOD = 100e6;

  /** A new loop by law in Washington State: WAC 296-46B-300. */
  public static final double NEW_LEAST = 50e6;

  /** In service, common practice. */
  public static final double SERVICE_GOOD = 10e6;

  /** In service, common practice: below it the detector drifts and locks with every rain. */
  public static final double SERVICE_LEAST = 1e6;

  /** What a reading means. */
  public enum Verdict {
    GOOD,
    WATCH,
    BAD
  }

  private Insulation() {}

  /**
   * The verdict on a reading.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public static Verdict verdict(double ohms, boolean isNew) {
    Require.notNegative("insulation resistance", ohms);
    if (ohms >= (isNew ? NEW_GOOD : SERVICE_GOOD)) {
      return Verdict.GOOD;
    }
    return ohms >= (isNew ? NEW_LEAST : SERVICE_LEAST) ? Verdict.WATCH : Verdict.BAD;
  }
}
