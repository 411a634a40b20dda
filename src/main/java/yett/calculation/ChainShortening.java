package yett.calculation;

/**
 * Splits a length to be taken out of a chain: whole pairs of pitches by removing links, the rest
 * with the tension bolts. Inner and outer links alternate, so only an even number of pitches comes
 * out without an offset link, and an offset link costs 30 % to 35 % of the strength. The length
 * removed never exceeds the take-up, so the chain always closes again. Source: chain handbooks
 * (Complete Guide to Chain, table 2.1, for the offset link); geometry.
 *
 * @param pitches to remove, even, 0 if the take-up is less than two
 * @param byBolts m to take up with the tension bolts afterwards; less than two pitches
 */
public record ChainShortening(int pitches, double byBolts) {
  /** Splits a take-up (m), see {@link ChainSag#takeUp}, for a chain of that pitch (m). */
  public static ChainShortening of(double takeUp, double pitch) {
    Require.notNegative("take-up", takeUp);
    Require.positive("pitch", pitch);
    // The tolerance lets a take-up of exactly two pitches count as two pitches despite rounding.
    int pairs = (int) Math.floor(takeUp / (2 * pitch) + 1e-9);
    return new ChainShortening(2 * pairs, Math.max(0, takeUp - 2 * pairs * pitch));
  }

  /** The least sag (m) of a span (m) from which so many pitches can be taken: √(3 L n p/8). */
  public static double leastSag(double span, int pitches, double pitch) {
    Require.positive("span", span);
    Require.positive("pitches", pitches);
    return Math.sqrt(3 * span * pitches * Require.positive("pitch", pitch) / 8);
  }
}
