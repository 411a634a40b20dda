package yett.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes a number for people: without meaningless digits, without grouping, the same in every
 * locale.
 */
final class PlainNumber {
  private static final MathContext SIGNIFICANT = new MathContext(4, RoundingMode.HALF_EVEN);
  private static final double LARGEST_PLAIN = 1e7;
  private static final double SMALLEST_PLAIN = 1e-4;

  private PlainNumber() {}

  static String of(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value must be finite, not " + value);
    }
    double size = Math.abs(value);
    BigDecimal exact = BigDecimal.valueOf(value);
    if (size != 0 && (size >= LARGEST_PLAIN || size < SMALLEST_PLAIN)) {
      return scientific(exact.round(SIGNIFICANT).stripTrailingZeros());
    }
    BigDecimal rounded =
        size < 1000 ? exact.round(SIGNIFICANT) : exact.setScale(0, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String scientific(BigDecimal value) {
    int exponent = value.precision() - value.scale() - 1;
    return value.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
  }
}
