package yett.calculation;

/**
 * How far a chain of one size may hang over a free run (m). Handbooks give the range for every span
 * alike; but what harms brackets, idlers and bearings is the pull of the chain, and over a short
 * run that stays small however little it hangs. So a chain is too tight only if it hangs less than
 * the handbook says and pulls with more than {@link #LITTLE} of what it may be worked at.
 *
 * @throws IllegalArgumentException if the span is not positive
 */
public record ChainHang(RollerChain chain, double span) {
  /** Share of the load a chain may be worked at that its own tension may take: judgement. */
  public static final double LITTLE = 0.2;

  public ChainHang {
    Require.positive("span", span);
  }

  /** N that the chain may be worked at with a connecting link in it. */
  public double workingLoad() {
    return ChainLoad.allowed(chain.minimumUltimateStrength(), ChainLoad.Joint.CONNECTING_LINK);
  }

  /**
   * Static sag (m): the handbook's range, its low end lower where the pull is little even there.
   */
  public Range usualSag() {
    Range handbook = ChainSag.usualSag(span);
    double pullsLittle = chain.weightPerLength() * span * span / (8 * LITTLE * workingLoad());
    return new Range(Math.min(handbook.low(), pullsLittle), handbook.high());
  }

  /** Total movement by hand (m) that belongs to the {@link #usualSag}. */
  public Range usualMovement() {
    Range sag = usualSag();
    return new Range(ChainSag.movementForSag(sag.low()), ChainSag.movementForSag(sag.high()));
  }

  /** Whether the low end is the handbook's. */
  public boolean byHandbook() {
    return usualSag().low() == ChainSag.usualSag(span).low();
  }
}
