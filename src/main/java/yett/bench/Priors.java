package yett.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;

/**
 * Converts a prior between the form in which people say it, of a hundred faulty gates, and the form
 * of a card.
 */
public final class Priors {
  private Priors() {}

  static Optional<String> complaint(String ofAHundred) {
    return CardQuestions.number(0.01, 90).apply(ofAHundred);
  }

  /** The form of a card. */
  static String figure(String ofAHundred) {
    return String.format(Locale.ROOT, "%.5f", Double.parseDouble(ofAHundred) / 100)
        .replaceFirst("0+$", "")
        .replaceFirst("\\.$", "");
  }

  /** The form in which people say it. */
  public static String words(double prior) {
    return "at "
        + new BigDecimal(100 * prior).round(new MathContext(3)).stripTrailingZeros().toPlainString()
        + " of a hundred faulty gates";
  }
}
