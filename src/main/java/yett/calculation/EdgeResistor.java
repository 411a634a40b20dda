package yett.calculation;

/**
 * The resistor at the end of a contact edge, by which its switching unit tells an idle edge from a
 * pressed one (near 0) and a broken wire (open). All in ohm. Source: Ohm's law, direct current.
 */
public final class EdgeResistor {
  private EdgeResistor() {}

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
   * The leak across a resistor that makes it read less: the inverse of {@link #parallel}.
   *
   * @throws IllegalArgumentException unless the reading is positive and under the resistor
   */
  public static double leak(double resistor, double reading) {
    Require.positive("reading", reading);
    return resistor * reading / Require.positive("resistor over reading", resistor - reading);
  }
}
