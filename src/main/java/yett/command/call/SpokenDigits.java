package yett.command.call;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes a telephone number that was typed as it is said: "double five five 0141". */
final class SpokenDigits {
  private static final List<String> DIGITS =
      List.of("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

  private static final String SAID =
      "(?:(?:double|triple|treble)[ -]+)?(?:" + String.join("|", DIGITS) + "|oh|nought|nil|\\d)";

  /**
   * A run of digits, at least one of them as a word. A comma may follow a word, as the number is
   * said in groups; behind a figure it ends the number of a house.
   */
  private static final Pattern RUN =
      Pattern.compile(
          "(?i)(?<![\\p{L}\\p{N}])"
              + SAID
              + "(?:(?:[ -]*|(?<=\\p{L})[,.] *)"
              + SAID
              + "){2,}(?![\\p{L}\\p{N}])");

  private static final Pattern ONE =
      Pattern.compile("(?i)(?:(double|triple|treble)[ -]+)?([a-z]+|\\d)");

  /** As many as a telephone number has at least. */
  private static final int LEAST = 6;

  private SpokenDigits() {}

  static String written(String line) {
    return RUN.matcher(line).replaceAll(m -> Matcher.quoteReplacement(digits(m.group())));
  }

  private static String digits(String run) {
    StringBuilder digits = new StringBuilder();
    boolean spoken = run.chars().anyMatch(Character::isLetter);
    Matcher one = ONE.matcher(run);
    while (one.find()) {
      int times = one.group(1) == null ? 1 : one.group(1).equalsIgnoreCase("double") ? 2 : 3;
      digits.append(digit(one.group(2)).repeat(times));
    }
    return spoken && digits.length() >= LEAST ? digits.toString() : run;
  }

  private static String digit(String said) {
    int at = DIGITS.indexOf(said.toLowerCase(java.util.Locale.ROOT));
    return at >= 0 ? Integer.toString(at) : said.matches("\\d") ? said : "0";
  }
}
