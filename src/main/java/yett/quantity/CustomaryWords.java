package yett.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Converts the quantities in sentences of cards and rules from SI to US customary units, for
 * example "50 mm to 57 mm" into "2 in to 2.25 in". Cards and rules are written in SI units. A
 * no-break space before the unit marks what somebody typed; that is left as it is.
 */
final class CustomaryWords {
  private static final Map<String, Unit> UNITS =
      Map.ofEntries(
          Map.entry("mm", Unit.MILLIMETRE),
          Map.entry("cm", Unit.CENTIMETRE),
          Map.entry("m", Unit.METRE),
          Map.entry("N", Unit.NEWTON),
          Map.entry("kN", Unit.KILONEWTON),
          Map.entry("kg", Unit.KILOGRAM),
          Map.entry("m/s", Unit.METRE_PER_SECOND),
          Map.entry("mm/s", Unit.MILLIMETRE_PER_SECOND),
          Map.entry("degC", Unit.CELSIUS),
          Map.entry("\u00b0C", Unit.CELSIUS),
          Map.entry("J", Unit.JOULE));

  private static final String NUMBER = "(?<![\\d.,/\\w])-?\\d+(?:\\.\\d+)?";

  /** One number with its unit, or two numbers with the unit after the second. */
  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?:("
              + NUMBER
              + ")( to | or | and |\u2013))?("
              + NUMBER
              + ") (mm/s|m/s|mm2|mm\u00b2|mm|cm|m|kN|N|kg|degC|\u00b0C|J)(?![\\w/\u00b2])");

  private static final MathContext FIGURES = new MathContext(3);
  private static final double LARGEST_CHANGE = 0.02;
  private static final double LEAST = 1e-3;

  private CustomaryWords() {}

  static String of(String sentence) {
    return QUANTITY.matcher(sentence).replaceAll(m -> Matcher.quoteReplacement(said(m)));
  }

  private static String said(MatchResult found) {
    String symbol = found.group(4);
    if (symbol.startsWith("mm2") || symbol.startsWith("mm\u00b2")) {
      // A conductor is sold by its cross-section: keep that and put the nearest gauge beside it.
      return found.group() + " (" + WireGauge.nearest(Double.parseDouble(found.group(3))) + ")";
    }
    Unit written = UNITS.get(symbol);
    Unit unit = Units.US.of(written);
    String last = figures(found.group(3), written, unit) + " " + unit.symbol();
    return found.group(1) == null
        ? last
        : figures(found.group(1), written, unit) + found.group(2) + last;
  }

  /**
   * The value as fine as it was written. A value in SI units is mostly a round one, so it is
   * rounded again here, the more the rounder it was, and by no more than a fiftieth.
   */
  private static String figures(String number, Unit written, Unit unit) {
    double value = unit.fromCanonical(written.toCanonical(Double.parseDouble(number)));
    double scale =
        unit.fromCanonical(written.toCanonical(1)) - unit.fromCanonical(written.toCanonical(0));
    double tolerance =
        scale
            * Math.min(
                halfLastDigit(number), LARGEST_CHANGE * Math.abs(Double.parseDouble(number)));
    double digit = Math.pow(10, Math.floor(Math.log10(Math.max(Math.abs(value), LEAST))));
    for (int figures = 0; figures < FIGURES.getPrecision(); figures++) {
      for (double step : steps(digit, unit)) {
        double round = step * Math.rint(value / step);
        if (Math.abs(round - value) <= tolerance) {
          return PlainNumber.of(round);
        }
      }
      digit /= 10;
    }
    return PlainNumber.of(new BigDecimal(value).round(FIGURES).doubleValue());
  }

  /** A rule for inches is divided into halves and quarters. */
  private static double[] steps(double digit, Unit unit) {
    return digit == 1 && unit == Unit.INCH
        ? new double[] {1, 0.5, 0.25}
        : new double[] {digit, digit / 2};
  }

  /** Half of the last digit that says something: 5 for 350, 0.5 for 57, 0.05 for 2.0. */
  private static double halfLastDigit(String number) {
    BigDecimal value = new BigDecimal(number);
    int scale = value.scale() > 0 ? value.scale() : value.stripTrailingZeros().scale();
    return 0.5 * Math.pow(10, -scale);
  }
}
