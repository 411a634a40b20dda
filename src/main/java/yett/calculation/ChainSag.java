package yett.calculation;

import java.util.OptionalDouble;

/**
 * Sag, tension and length of a chain hanging between two supports at one height.
 *
 * <p>Symbols: L span (m), s sag at mid-span below the straight line (m), w weight per length (N/m),
 * H horizontal tension (N), S length along the chain (m). The parabola is good for s/L up to 0.1
 * (0.3 % low in H at 4 %); beyond that use the catenary. Source: statics textbooks, cable under its
 * own weight.
 *
 * <p>Chain handbooks give slack as the <em>total hand movement</em> at mid-span, pushed up and down
 * until the chain is straight. That is not the sag: see {@link #sagForMovement}.
 *
 * <p>All methods throw IllegalArgumentException if a length or weight is not positive.
 */
public final class ChainSag {
  private ChainSag() {}

  /** Horizontal tension (N) by the parabola: H = w L²/(8 s). */
  public static double tension(double weightPerLength, double span, double sag) {
    Require.positive("weight per length", weightPerLength);
    Require.positive("span", span);
    Require.positive("sag", sag);
    return weightPerLength * span * span / (8 * sag);
  }

  /** Length along the chain (m) by the parabola: S = L + 8 s²/(3 L). */
  public static double length(double span, double sag) {
    Require.positive("span", span);
    Require.notNegative("sag", sag);
    return span + 8 * sag * sag / (3 * span);
  }

  /** Horizontal tension (N) by the catenary: H = w a, where s = a (cosh(L/2a) - 1). */
  public static double catenaryTension(double weightPerLength, double span, double sag) {
    Require.positive("weight per length", weightPerLength);
    return weightPerLength * catenaryParameter(span, sag);
  }

  /**
   * Greatest tension (N), at the supports, by the catenary: w (a + s). This is the load on the
   * brackets and on a connecting link from the chain's own weight.
   */
  public static double catenaryGreatestTension(double weightPerLength, double span, double sag) {
    return catenaryTension(weightPerLength, span, sag) + weightPerLength * sag;
  }

  /** Length along the chain (m) by the catenary: S = 2 a sinh(L/2a). */
  public static double catenaryLength(double span, double sag) {
    double a = catenaryParameter(span, sag);
    return 2 * a * Math.sinh(span / (2 * a));
  }

  /**
   * The catenary parameter a (m), from x = L/2a as the root of (cosh x - 1)/x = 2 s/L, whose left
   * side only rises.
   */
  private static double catenaryParameter(double span, double sag) {
    Require.positive("span", span);
    Require.positive("sag", sag);
    double target = 2 * sag / span;
    double low = 0;
    double high = 1;
    while (steepness(high) < target) {
      high *= 2;
    }
    for (int halving = 0; halving < 100; halving++) {
      double middle = (low + high) / 2;
      if (steepness(middle) < target) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return span / (2 * high);
  }

  /** (cosh x - 1)/x, in a form that loses no precision at small x. */
  private static double steepness(double x) {
    double half = Math.sinh(x / 2);
    return 2 * half * half / x;
  }

  /**
   * Length of chain (m) to take up to bring the sag from s1 to s2: 8 (s1² - s2²)/(3 L). Negative if
   * chain must be let out.
   */
  public static double takeUp(double span, double sagBefore, double sagAfter) {
    return length(span, sagBefore) - length(span, sagAfter);
  }

  /**
   * Sag (m) once chain is added (positive) or removed (negative): √(s² + 3 L d/8). Empty if so much
   * would be removed that the chain no longer reaches.
   */
  public static OptionalDouble sagAfterChange(double span, double sag, double change) {
    Require.positive("span", span);
    Require.notNegative("sag", sag);
    Require.finite("change", change);
    double square = sag * sag + 3 * span * change / 8;
    return square < 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(square));
  }

  /**
   * Static sag (m) of a chain whose total hand movement at mid-span is M: s = M √3/4 = 0.4330 M.
   * Pulled straight to either side the same length of chain makes a triangle, L + 2 y²/L with M = 2
   * y; hanging free it makes L + 8 s²/(3 L). Good for M/L up to about 0.1.
   */
  public static double sagForMovement(double movement) {
    return Require.notNegative("movement", movement) * Math.sqrt(3) / 4;
  }

  /** Total hand movement (m) at mid-span of a chain that sags s; see {@link #sagForMovement}. */
  public static double movementForSag(double sag) {
    return Require.notNegative("sag", sag) * 4 / Math.sqrt(3);
  }

  /**
   * The usual total hand movement (m) of a span: 2 % to 4 % of it. A chain handbook (Complete Guide
   * to Chain, 7.1.2) gives 4 % for ordinary drives and 2 % where centres are over 1 m, starts are
   * heavy or motion reverses suddenly.
   */
  public static Range usualMovement(double span) {
    Require.positive("span", span);
    return new Range(0.02 * span, 0.04 * span);
  }

  /** The usual static sag (m) of a span: that of the {@link #usualMovement}. */
  public static Range usualSag(double span) {
    Range movement = usualMovement(span);
    return new Range(sagForMovement(movement.low()), sagForMovement(movement.high()));
  }
}
