package yett.saying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** The parts of what somebody says in one breath, each of which may tell of another thing. */
final class Clauses {
  /** Two words that belong together with an "and": "now and then", "on and off". */
  private static final String PAIR = "(?<!\\bnow |\\bagain |\\bover |\\bon |\\bback |\\bup )";

  /** Where people go on to the next thing; punctuation as dictated too. */
  private static final Pattern NEXT =
      Pattern.compile(
          "(?i)[,;:.!?]+(?!\\d)|\\b(?:but|because|although|though|while|comma"
              + "|full stop|question mark|exclamation mark)\\b|"
              + PAIR
              + "\\band\\b|(?<!\\band |\\bback |\\bby |\\bsince )\\bthen\\b"
              + "|\\bso\\b(?= (?:i|we|it|he|she|they|the|that|now|you|my|our|your|there)\\b)");

  private Clauses() {}

  /** The whole first; the parts after it, if it has more than one that says something. */
  static List<String> of(String said) {
    String words = ComesBack.told(said);
    List<String> all = new ArrayList<>(List.of(words.strip()));
    List<String> parts =
        Arrays.stream(NEXT.split(words))
            .map(String::strip)
            .filter(p -> p.contains(" ") || p.length() > 5)
            .toList();
    if (parts.size() > 1) {
      all.addAll(parts);
    }
    return all;
  }
}
