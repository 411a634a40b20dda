package yett.knowledge;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.knowledge.Band.Limit;
import yett.quantity.Quantity;
import yett.quantity.ReadingException;
import yett.quantity.Unit;

/**
 * Parses the words that define a band: {@code below 24 V}, {@code within expectation} and so on.
 */
public final class BandText {
  static final String DO_NOT_MEET = "the bands leave a gap or overlap";

  static final String MEET =
      "Each limit should end one band and begin another; one band is open below, one above.";

  private static final Pattern RELATIVE =
      Pattern.compile("(?:([0-9]*\\.?[0-9]+)\\s*x\\s*)?(low|high)");

  /** Longest text (characters), to limit the time of parsing. */
  private static final int LONGEST = 200;

  private BandText() {}

  static Band parse(String text, Measures measures) {
    String words = text.strip();
    if (words.length() > LONGEST) {
      throw new IllegalArgumentException(
          "this is too long for a band; write one such as \"24 V to 25.2 V\"");
    }
    if (words.equals("within expectation")) {
      return new Band(new Band.Expected(1, false), new Band.Expected(1, true));
    }
    if (words.startsWith("below ")) {
      return new Band(Band.Unbounded.BELOW, limit(words.substring(6), false, measures));
    }
    if (words.startsWith("above ")) {
      return new Band(limit(words.substring(6), true, measures), Band.Unbounded.ABOVE);
    }
    String[] ends = words.split("\\s+to\\s+");
    if (ends.length != 2) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is not a band; write \"below 24 V\", \"24 V to 25.2 V\", \"above 25.2 V\", "
              + "\"within expectation\" or \"above 1.5 x high\"");
    }
    return new Band(limit(ends[0], false, measures), limit(ends[1], true, measures));
  }

  private static Limit limit(String text, boolean upper, Measures measures) {
    String words = text.strip();
    if (words.equals("expectation")) {
      return new Band.Expected(1, upper);
    }
    Matcher relative = RELATIVE.matcher(words);
    if (relative.matches()) {
      double factor = relative.group(1) == null ? 1 : Double.parseDouble(relative.group(1));
      return new Band.Expected(factor, relative.group(2).equals("high"));
    }
    return new Band.Fixed(measures.parse(words));
  }

  /** What is wrong with the bands of a card that measures this; empty if nothing is. */
  public static Optional<String> complaint(Quantity quantity, Unit unit, List<String> bands) {
    Measures measures =
        new Measures(
            quantity, unit, "", "eye", 0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    try {
      List<Check.Outcome> outcomes =
          bands.stream()
              .map(band -> new Check.Outcome(band, band, Optional.of(parse(band, measures))))
              .toList();
      return coverAll(outcomes)
          ? Optional.empty()
          : Optional.of(sentence(DO_NOT_MEET) + " " + MEET);
    } catch (IllegalArgumentException | ReadingException e) {
      return Optional.of(sentence(e.getMessage()));
    }
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  /** Whether every reading falls in exactly one band. */
  static boolean coverAll(List<Check.Outcome> outcomes) {
    Map<String, Integer> ends = new HashMap<>();
    ends.put(words(Band.Unbounded.BELOW), -1);
    ends.put(words(Band.Unbounded.ABOVE), 1);
    for (Check.Outcome outcome : outcomes) {
      if (outcome.band().isEmpty()) {
        return true; // already reported as a band that cannot be read
      }
      ends.merge(words(outcome.band().get().low()), 1, Integer::sum);
      ends.merge(words(outcome.band().get().high()), -1, Integer::sum);
    }
    return ends.values().stream().allMatch(left -> left == 0);
  }

  /** A text that is the same for equal limits. */
  private static String words(Limit limit) {
    if (limit instanceof Band.Fixed fixed) {
      return Double.toString(fixed.value());
    }
    if (limit instanceof Band.Expected expected) {
      return expected.factor() + (expected.high() ? " x high" : " x low");
    }
    return ((Band.Unbounded) limit).name();
  }
}
