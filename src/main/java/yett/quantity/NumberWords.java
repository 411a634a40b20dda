package yett.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes a reading that was typed in words with figures: "half a minute", "two and a half inches",
 * "a minute and a half". Only a number that a unit follows is one; "two" alone may be an answer to
 * something else. A vague number ("a few") is none.
 */
final class NumberWords {
  private static final List<String> SMALL =
      List.of(
          "zero",
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");

  private static final List<String> TENS =
      List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");

  private static final Map<String, Double> PARTS =
      Map.of("half", 2.0, "third", 3.0, "quarter", 4.0, "eighth", 8.0);

  private static final String PART = "(half|third|quarter|eighth)";
  private static final String WHOLE =
      "(an?|(?:" + String.join("|", TENS) + ")(?:[- ](?:" + digits() + "))?|" + small() + ")";
  private static final String UNIT = "([a-z][a-z. ]*)";

  /** "half a minute", "three quarters of an hour". */
  private static final Pattern PART_OF =
      Pattern.compile("(?:an? )?(?:" + WHOLE + " )?" + PART + "s?(?: of)?(?: an?)? " + UNIT);

  /** "ten seconds", "two and a half minutes". */
  private static final Pattern OF_UNIT =
      Pattern.compile(WHOLE + "(?: and (?:an? )?" + PART + ")? " + UNIT);

  /** "a minute and a half". */
  private static final Pattern AND_PART = Pattern.compile(WHOLE + " ([a-z]+) and (?:an? )?" + PART);

  private NumberWords() {}

  private static String digits() {
    return String.join("|", SMALL.subList(1, 10));
  }

  /** The longer words first: "seven" is also the beginning of "seventeen". */
  private static String small() {
    return String.join("|", SMALL.subList(10, SMALL.size()))
        + "|"
        + String.join("|", SMALL.subList(0, 10));
  }

  /** The line with its number in figures; unchanged if it has figures or is no such reading. */
  static String figures(String line) {
    String text = line.toLowerCase(Locale.ROOT).replaceFirst("^(?:about|around|roughly) ", "");
    if (text.chars().anyMatch(Character::isDigit)) {
      return line;
    }
    Matcher and = AND_PART.matcher(text);
    if (and.matches()) {
      return written(whole(and.group(1)) + 1 / PARTS.get(and.group(3)), and.group(2));
    }
    Matcher part = PART_OF.matcher(text);
    if (part.matches()) {
      double many = part.group(1) == null ? 1 : whole(part.group(1));
      return written(many / PARTS.get(part.group(2)), part.group(3));
    }
    Matcher unit = OF_UNIT.matcher(text);
    if (unit.matches()) {
      double more = unit.group(2) == null ? 0 : 1 / PARTS.get(unit.group(2));
      return written(whole(unit.group(1)) + more, unit.group(3));
    }
    return line;
  }

  private static double whole(String words) {
    double sum = 0;
    for (String word : words.split("[- ]")) {
      sum += word.matches("an?") ? 1 : Math.max(0, SMALL.indexOf(word));
      sum += TENS.contains(word) ? 10.0 * (TENS.indexOf(word) + 2) : 0;
    }
    return sum;
  }

  private static String written(double value, String unit) {
    return PlainNumber.of(value) + " " + unit;
  }
}
