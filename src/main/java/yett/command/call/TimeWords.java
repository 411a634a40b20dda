package yett.command.call;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import yett.command.common.NearNames;
import yett.saying.Slips;

/** Brings the words that name a time into one form: "half an hour" becomes "30 min". */
final class TimeWords {
  private static final List<String> KNOWN =
      List.of(
          "tomorrow",
          "today",
          "tonight",
          "morning",
          "afternoon",
          "evening",
          "monday",
          "tuesday",
          "wednesday",
          "thursday",
          "friday",
          "saturday",
          "sunday",
          "minutes",
          "hours");

  private static final List<String> NUMBERS =
      List.of(
          "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
          "twelve");

  /** Applied in this order. */
  private static final Map<Pattern, String> FORMS = new LinkedHashMap<>();

  static {
    form("\\bmidday\\b", "noon");
    form("\\bthis evening\\b", "evening");
    form("\\b(mon|tues?|wed|thu|thurs?|fri|sat|sun)\\b", "$1day");
    form("\\btues?day\\b", "tuesday");
    form("\\bwedday\\b", "wednesday");
    form("\\bthu(?:rs?)?day\\b", "thursday");
    form("\\bsatday\\b", "saturday");
    form("\\bo ?clock\\b", "oclock");
    form("\\b([ap]) m\\b", "$1m");
    form("\\bhalf (?:past )?(\\d{1,2})\\b(?! ?(?:h|hours?|min|minutes?)\\b)", "$1:30");
    form("\\b(?:an|1) hour and a half\\b", "90 min");
    form("\\bhalf (?:an )?hour\\b", "30 min");
    form("\\bthree quarters of an hour\\b", "45 min");
    form("\\b(?:a )?quarter of an hour\\b", "15 min");
    form("\\b(?:a )?couple of\\b", "2");
    form("\\b(?:an|the) hour\\b", "1 hour");
  }

  private static void form(String said, String meant) {
    FORMS.put(Pattern.compile(said), meant);
  }

  /** Minutes in words before or after an hour; "10 to 12" in digits is from ten to twelve. */
  private static final Pattern MINUTES =
      Pattern.compile(
          "\\b(?:a )?(five|ten|quarter|twenty[- ]five|twenty)(?: minutes)? (past|to) (\\w+)\\b");

  /** The words in small letters, with misspellings corrected. */
  String plain(String words) {
    String small =
        words
            .toLowerCase(Locale.ROOT)
            .replaceAll("['’]", "")
            .replaceAll("(?<=\\b[ap])\\.(?=\\s?m\\b)", "");
    String text =
        Arrays.stream(MINUTES.matcher(small).replaceAll(TimeWords::clock).split("\\s+"))
            .map(TimeWords::word)
            .collect(Collectors.joining(" "));
    for (Map.Entry<Pattern, String> form : FORMS.entrySet()) {
      text = form.getKey().matcher(text).replaceAll(form.getValue());
    }
    return text;
  }

  private static String clock(MatchResult said) {
    String named = said.group(3);
    int hour = named.matches("\\d{1,2}") ? Integer.parseInt(named) : NUMBERS.indexOf(named) + 1;
    if (hour == 0 || hour > 24) {
      return said.group();
    }
    int minutes =
        switch (said.group(1)) {
          case "five" -> 5;
          case "ten" -> 10;
          case "quarter" -> 15;
          case "twenty" -> 20;
          default -> 25;
        };
    boolean past = said.group(2).equals("past");
    int full = past ? hour % 24 : hour == 1 ? 12 : hour - 1;
    return String.format(Locale.ROOT, "%d:%02d", full, past ? minutes : 60 - minutes);
  }

  private static String word(String word) {
    String letters = word.replaceAll("[^\\p{L}]+$", "");
    String after = word.substring(letters.length());
    int number = NUMBERS.indexOf(letters);
    return (number >= 0 ? Integer.toString(number + 1) : right(letters)) + after;
  }

  private static String right(String word) {
    return word.length() < 5 || KNOWN.contains(word)
        ? word
        : KNOWN.stream()
            .filter(k -> NearNames.isSlipOf(word, k))
            .min(Comparator.comparingInt(k -> Slips.between(word, k)))
            .orElse(word);
  }
}
