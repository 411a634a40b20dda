package yett.calculation;

/**
 * The usual sag of a chain of one size over a free run (m). Handbooks give the same percentage for
 * every span. But brackets, idlers and bearings are harmed by the tension of the chain, and over a
 * short run that stays low even with little sag. So a chain counts as too tight only if it sags
 * less than the handbook says and its tension is more than {@link #LITTLE} of its working load.
 *
 * @throws IllegalArgumentException if the span is not positive
 */
public record ChainHang(RollerChain chain, double span) {
  /**
   * Share of the working load that the tension from the chain's own weight may take: considered
   * judgement.
   */
  public static final double LITTLE = 0.2;

  public ChainHang {
    Require.positive("span", span);
  }

  /** Working load (N) of the chain with a connecting link in it. */
  public double workingLoad() {
    return ChainLoad.allowed(chain.minimumUltimateStrength(), ChainLoad.Joint.CONNECTING_LINK);
  }

  /**
   * Usual static sag (m): the handbook's range. Its low end is lowered where the tension is still
   * small there.
   */
  public Range usualSag() {
    Range handbook = ChainSag.usualSag(span);
    double pullsLittle = chain.weightPerLength() * span * span / (8 * LITTLE * workingLoad());
    return new Range(Math.min(handbook.low(), pullsLittle), handbook.high());
  }

  /** Total hand movement (m) that corresponds to {@link #usualSag}. */
  public Range usualMovement() {
    Range sag = usualSag();
    return new Range(ChainSag.movementForSag(sag.low()), ChainSag.movementForSag(sag.high()));
  }

  /** Whether the low end of {@link #usualSag} is the handbook's, not lowered. */
  public boolean byHandbook() {
    return usualSag().low() == ChainSag.usualSag(span).low();
  }
}
