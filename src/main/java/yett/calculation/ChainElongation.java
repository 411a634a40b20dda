package yett.calculation;

/**
 * Calculates the wear of a roller chain from its length over a number of pitches. Pitch and
 * measured length in m, elongation in percent. Measure taut, pin centre to pin centre, over 6 to 10
 * pitches or more, with no offset link inside (maintenance notes of chain handbooks).
 */
public final class ChainElongation {
  private static final double ORDINARY_LIMIT = 3;

  /** Percent at which a chain between fixed centres is worn out: chain handbook. */
  public static final double FIXED_CENTRES_LIMIT = 1.5;

  private ChainElongation() {}

  /**
   * Elongation (%): 100 (M - n P)/(n P); negative if shorter than nominal.
   *
   * @throws IllegalArgumentException if any argument is not positive
   */
  public static double percent(double measured, int pitches, double pitch) {
    Require.positive("measured length", measured);
    double nominal = lengthAt(0, pitches, pitch);
    return 100 * (measured - nominal) / nominal;
  }

  /**
   * Length (m) of n pitches at an elongation in percent.
   *
   * @throws IllegalArgumentException if pitches or pitch is not positive
   */
  public static double lengthAt(double percent, int pitches, double pitch) {
    Require.positive("pitches", pitches);
    Require.positive("pitch", pitch);
    return Require.finite("percent", percent) / 100 * pitches * pitch + pitches * pitch;
  }

  /**
   * Elongation (%) at which to replace: 3, or 1.5 where centres are fixed, strands run in parallel
   * or the drive must run smoothly; never more than 200/N for a large sprocket of N teeth. Source:
   * chain handbooks and makers' wear notes that refer to ASME B29.1.
   *
   * @throws IllegalArgumentException if the teeth are not positive
   */
  public static double limitPercent(int largeSprocketTeeth, boolean fixedCentres) {
    Require.positive("teeth of the large sprocket", largeSprocketTeeth);
    double limit = fixedCentres ? FIXED_CENTRES_LIMIT : ORDINARY_LIMIT;
    return Math.min(limit, 200.0 / largeSprocketTeeth);
  }
}
