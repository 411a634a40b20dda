package yett.saying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** The parts of what somebody says in one breath, each of which may tell of another thing. */
final class Clauses {
  /** Where people go on to the next thing; punctuation as dictated too. */
  private static final Pattern NEXT =
      Pattern.compile(
          "(?i)[,;:.!?]+(?!\\d)|\\b(?:and|but|then|because|although|though|so|while|comma"
              + "|full stop|question mark|exclamation mark)\\b");

  private Clauses() {}

  /** The whole first; the parts after it, if it has more than one that says something. */
  static List<String> of(String words) {
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
