package yett.saying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Splits what somebody says into clauses, because each may be about another thing. */
final class Clauses {
  /** A separator of clauses: a conjunction or punctuation, also dictated punctuation. */
  private static final Pattern NEXT =
      Pattern.compile(
          "(?i)[,;:.!?]+(?!\\d)|\\b(?:and|but|then|because|although|though|so|while|comma"
              + "|full stop|question mark|exclamation mark)\\b");

  private Clauses() {}

  /** The whole text first; then its clauses, if more than one says something. */
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
