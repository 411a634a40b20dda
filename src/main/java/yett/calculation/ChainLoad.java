package yett.calculation;

/**
 * Calculates the working load of a roller chain from the minimum strength in its standard. Forces
 * in N.
 *
 * <p>The minimum ultimate strength (ASME B29.1, ISO 606) is the load at which a new chain breaks in
 * one slow pull. The daily working load is a seventh of it; handbooks give a factor from 6 to 10
 * for drives that start under load or reverse (common practice). A slip-fit connecting link takes
 * up to 20 % off, a one-pitch offset link 35 % (Complete Guide to Chain, 1.1.1 and table 2.1).
 */
public final class ChainLoad {
  /** Usual ratio of strength to working load: common practice, handbooks 6 to 10. */
  public static final double USUAL_FACTOR = 7;

  /** The weakest joint in the chain. */
  public enum Joint {
    /** Riveted all the way. */
    RIVETED(1),
    /** A connecting link whose plate slips on, held by a spring clip or cotters. */
    CONNECTING_LINK(0.8),
    /** A one-pitch offset link, the sign of an odd number of pitches. */
    OFFSET_LINK(0.65);

    private final double share;

    Joint(double share) {
      this.share = share;
    }

    /** Share of a riveted chain's working load that is left with this joint, 0 to 1. */
    public double share() {
      return share;
    }
  }

  private ChainLoad() {}

  /**
   * Strength over working load.
   *
   * @throws IllegalArgumentException if strength or load is not positive
   */
  public static double factor(double minimumUltimateStrength, double workingLoad) {
    return Require.positive("strength", minimumUltimateStrength)
        / Require.positive("working load", workingLoad);
  }

  /**
   * Working load (N) that the usual factor allows for a chain with that joint.
   *
   * @throws IllegalArgumentException if the strength is not positive
   */
  public static double allowed(double minimumUltimateStrength, Joint joint) {
    return Require.positive("strength", minimumUltimateStrength) / USUAL_FACTOR * joint.share();
  }
}
