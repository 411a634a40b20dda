package yett.quantity;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Quotes a mistyped word for a message, and suggests the word that was meant. */
final class Spelling {
  private static final int LONGEST_QUOTE = 24;
  private static final LevenshteinDistance EDITS = LevenshteinDistance.getDefaultInstance();

  private Spelling() {}

  /**
   * The text in quotation marks, shortened, without control characters that could disturb a
   * terminal.
   */
  static String quoted(String text) {
    String safe =
        text.codePoints()
            .map(c -> printable(c) ? c : '?')
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    return safe.codePointCount(0, safe.length()) <= LONGEST_QUOTE
        ? "\"" + safe + "\""
        : "\"" + safe.substring(0, safe.offsetByCodePoints(0, LONGEST_QUOTE)) + "...\"";
  }

  static boolean printable(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  /** The question "did you mean ...?" with the nearest known word; empty if none is near. */
  static Optional<String> didYouMean(String typed, Collection<String> known) {
    int reach = Math.max(1, (typed.length() + 1) / 3);
    List<String> words =
        known.stream().filter(w -> Math.abs(w.length() - typed.length()) <= reach).toList();
    int nearest =
        words.stream().mapToInt(word -> distance(typed, word)).min().orElse(Integer.MAX_VALUE);
    if (nearest > reach || nearest >= typed.length()) {
      return Optional.empty();
    }
    List<String> candidates =
        words.stream()
            .filter(word -> distance(typed, word) == nearest)
            .distinct()
            .limit(3)
            .toList();
    return Optional.of(
        candidates.stream().collect(Collectors.joining(" or ", "did you mean ", "?")));
  }

  /**
   * The number of edits from one word to the other. A swap of two neighbours counts as one edit;
   * the library counts two.
   */
  private static int distance(String typed, String word) {
    String a = typed.toLowerCase(Locale.ROOT);
    String b = word.toLowerCase(Locale.ROOT);
    return IntStream.range(1, a.length())
        .map(i -> 1 + EDITS.apply(swapped(a, i), b))
        .reduce(EDITS.apply(a, b), Math::min);
  }

  private static String swapped(String word, int at) {
    return word.substring(0, at - 1)
        + word.charAt(at)
        + word.charAt(at - 1)
        + word.substring(at + 1);
  }
}
