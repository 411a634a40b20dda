package yett.calculation;

/**
 * The resistor at the end of a contact edge, by which its switching unit tells an idle edge from a
 * pressed one (near 0) and a broken wire (open). All in ohm. Source: Ohm's law, direct current.
 */
public final class EdgeResistor {
  /** Ohm of the end resistor that is published for closed-circuit edges. */
  public static final double PUBLISHED = 8200;

  private EdgeResistor() {}

  /**
   * The range (ohm) that an idle edge may read in service. The low end follows an edge data sheet,
   * where a damp edge of 8.2 kohm still reads 5.4 kohm; others in proportion. The high end is a
   * tenth over the resistor, for joints: considered judgement.
   *
   * @throws IllegalArgumentException if the resistor is not positive
   */
  public static Range sound(double resistor) {
    Require.positive("resistor", resistor);
    return new Range(resistor * 5400 / PUBLISHED, resistor * 1.1);
  }

  /** Whether a reading is, within a fraction, that of two such edges in parallel or in series. */
  public static boolean readsAsTwo(double resistor, double tolerance, double reading) {
    return Math.abs(2 * reading / resistor - 1) <= tolerance
        || Math.abs(reading / (2 * resistor) - 1) <= tolerance;
  }

  /**
   * What an idle edge reads: R (1 - t) to R (1 + t), and the leads' own resistance.
   *
   * @param tolerance t as a fraction
   * @throws IllegalArgumentException if the resistor is not positive, the leads negative or the
   *     tolerance not from 0 to 0.5
   */
  public static Range window(double resistor, double tolerance, double leads) {
    Require.positive("resistor", resistor);
    Require.between("tolerance", tolerance, 0, 0.5);
    Require.notNegative("leads", leads);
    return new Range(resistor * (1 - tolerance) + leads, resistor * (1 + tolerance) + leads);
  }

  /**
   * Two resistances side by side: a b/(a + b).
   *
   * @throws IllegalArgumentException if one is not positive
   */
  public static double parallel(double a, double b) {
    return Require.positive("resistance", a) * Require.positive("resistance", b) / (a + b);
  }

  /**
   * The leak resistance across a resistor that explains a low reading: the inverse of {@link
   * #parallel}.
   *
   * @throws IllegalArgumentException unless the reading is positive and under the resistor
   */
  public static double leak(double resistor, double reading) {
    Require.positive("reading", reading);
    return resistor * reading / Require.positive("resistor over reading", resistor - reading);
  }
}
