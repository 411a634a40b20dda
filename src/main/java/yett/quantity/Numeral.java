package yett.quantity;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The number part of a typed reading: decimal, with an exponent, a fraction, or a mixed number. */
final class Numeral {
  /** Matches what may be a number; {@link #value} decides. */
  static final String PATTERN =
      "\\d+(?: |- ?)\\d+/\\d+|\\d+/\\d+|(?:\\d[\\d.,]*|[.,]\\d+)(?:[eE][+-]?\\d+)?";

  private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)[ -]+)?(\\d+)/(\\d+)");

  /** Denominators that people type: those of a rule, and thirds. */
  private static final Set<String> ON_A_RULE = Set.of("2", "3", "4", "8", "16", "32", "64");

  private static final Pattern GROUPS_OF_COMMAS = Pattern.compile("\\d{1,3}(,\\d{3})+(\\.\\d*)?");
  private static final Pattern GROUPS_OF_POINTS = Pattern.compile("\\d{1,3}(\\.\\d{3})+(,\\d+)?");
  private static final Pattern ONE_COMMA_GROUP = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
  private static final Pattern DECIMAL = Pattern.compile("\\d+[.]?|\\d*[.,]\\d+");

  private Numeral() {}

  /**
   * The finite value of a text that matches {@link #PATTERN}.
   *
   * @throws ReadingException if the text has two possible meanings or none
   */
  static double value(String text) {
    Matcher fraction = FRACTION.matcher(text);
    double value = fraction.matches() ? fraction(text, fraction) : decimal(text);
    if (!Double.isFinite(value)) {
      throw new ReadingException(Spelling.quoted(text) + " is too large to be a reading.");
    }
    return value;
  }

  private static double fraction(String text, Matcher parts) {
    double numerator = Double.parseDouble(parts.group(2));
    double denominator = Double.parseDouble(parts.group(3));
    if (denominator == 0) {
      throw new ReadingException(Spelling.quoted(text) + " divides by zero; type it as a decimal.");
    }
    if (numerator >= denominator) {
      throw new ReadingException(
          Spelling.quoted(text) + " has a fraction of one or more; type it like 7 1/2 or as 7.5.");
    }
    if (!ON_A_RULE.contains(parts.group(3))) {
      throw new ReadingException(
          Spelling.quoted(text) + " may be two readings; type one, or the fraction as a decimal.");
    }
    double whole = parts.group(1) == null ? 0 : Double.parseDouble(parts.group(1));
    return whole + numerator / denominator;
  }

  private static double decimal(String text) {
    String[] parts = text.split("[eE]", 2);
    String exponent = parts.length == 2 ? "e" + parts[1] : "";
    double value = Double.parseDouble(plain(parts[0], text) + exponent);
    boolean vanished = value == 0 && parts[0].chars().anyMatch(c -> c >= '1' && c <= '9');
    if (vanished) {
      throw new ReadingException(Spelling.quoted(text) + " is too small to be a reading.");
    }
    return value;
  }

  /** The digits with a decimal point and no grouping. */
  private static String plain(String digits, String text) {
    if (ONE_COMMA_GROUP.matcher(digits).matches()) {
      throw new ReadingException(
          String.format(
              "%s can be read in two ways; say %s or %s.",
              Spelling.quoted(text), text.replace(",", ""), text.replace(',', '.')));
    }
    if (DECIMAL.matcher(digits).matches()) {
      return digits.replace(',', '.');
    }
    if (GROUPS_OF_COMMAS.matcher(digits).matches()) {
      return digits.replace(",", "");
    }
    if (GROUPS_OF_POINTS.matcher(digits).matches()) {
      return digits.replace(".", "").replace(',', '.');
    }
    throw new ReadingException(
        Spelling.quoted(text) + " is not a number; type it like 24.3, 1234 or 7 1/2.");
  }
}
