package yett.calculation;

/**
 * Rolling resistance of a leaf on its wheels, from the wheels themselves: c = (2/D)(μ d/2 + f) + e,
 * with D wheel and d axle diameter (m), μ friction of the bearing, f lever arm of rolling (m) and e
 * the share of flange or guide. A share of the weight, without unit. Source: travel resistance as
 * crane and drive handbooks give it (formula from memory); the coefficients are those of a table of
 * drive engineering in inch units, which agree with 0.5 mm for steel on steel in crane practice. A
 * clean, straight track only: dirt, flat spots, a bent rail or a dragging guide add to it.
 */
public final class WheelResistance {
  /** Materials of wheel and rail. */
  public enum Tread {
    STEEL_ON_STEEL(0.02),
    POLYMER_ON_STEEL(0.08),
    POLYMER_ON_CONCRETE(0.2);

    private final double leverArm;

    Tread(double inches) {
      leverArm = inches * 0.0254;
    }

    /** Lever arm of rolling f (m). */
    public double leverArm() {
      return leverArm;
    }
  }

  /** The kind of wheel bearing. */
  public enum Bearing {
    /** Ball or roller bearing. */
    ROLLING(0.005, 0.003),
    /** Bush on a pin; the middle of 0.08 to 0.10. */
    PLAIN(0.09, 0.005);

    private final double friction;
    private final double flange;

    Bearing(double friction, double flange) {
      this.friction = friction;
      this.flange = flange;
    }

    /** Friction coefficient μ of the bearing. */
    public double friction() {
      return friction;
    }

    /** e, the share of the flange with wheels on this bearing. */
    public double flange() {
      return flange;
    }
  }

  private WheelResistance() {}

  /**
   * c by the formula above.
   *
   * @throws IllegalArgumentException if a diameter is not positive or the axle not thinner than the
   *     wheel
   */
  public static double coefficient(
      double wheelDiameter, double axleDiameter, Tread tread, Bearing bearing) {
    Require.positive("wheel diameter", wheelDiameter);
    Require.positive("axle diameter", axleDiameter);
    Require.positive("wheel diameter beyond the axle", wheelDiameter - axleDiameter);
    return 2 / wheelDiameter * (bearing.friction() * axleDiameter / 2 + tread.leverArm())
        + bearing.flange();
  }
}
