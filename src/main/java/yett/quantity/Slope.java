package yett.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads slopes given other than in percent, as spirit levels and drawings give them. The value is
 * rise over run in %.
 */
public final class Slope {
  private static final Pattern ANGLE = Pattern.compile("(?i)(.+?) ?(?:°|deg|degrees?)\\.?");
  private static final Pattern RISE =
      Pattern.compile(
          "(?i)(.+?) ?(mm|cm|in|inch|inches|\") ?(?:/|per) ?(m|metre|meter|ft|foot|')\\.?");

  private Slope() {}

  /**
   * Reads {@code 2 deg}, {@code 1/4 in/ft} or {@code 5 mm/m}; empty for anything else.
   *
   * @throws ReadingException if the number before the unit cannot be read
   */
  public static Optional<Reading> parse(String typed) {
    String line = Keyboard.plain(typed);
    Matcher angle = ANGLE.matcher(line);
    if (angle.matches()) {
      double degrees = Reading.parse(angle.group(1), Quantity.ANGLE, Unit.DEGREE).value();
      if (Math.abs(degrees) >= 90) {
        throw new ReadingException(
            Spelling.quoted(typed) + " is not a slope; type it like 2 deg or 3 %.");
      }
      return Optional.of(percent(100 * Math.tan(Math.toRadians(degrees)), typed));
    }
    Matcher rise = RISE.matcher(line);
    if (!rise.matches()) {
      return Optional.empty();
    }
    double up =
        Reading.parse(rise.group(1) + " " + rise.group(2), Quantity.LENGTH, Unit.MILLIMETRE)
            .value();
    double along = Unit.parse(rise.group(3)).toCanonical(1);
    return Optional.of(percent(100 * up / along, typed));
  }

  private static Reading percent(double value, String typed) {
    return new Reading(value, typed.strip(), Quantity.RATIO, Unit.PERCENT);
  }
}
