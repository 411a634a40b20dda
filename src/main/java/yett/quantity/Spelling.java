package yett.quantity;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Quotes a mistyped word in a message, and guesses which word was meant. */
final class Spelling {
  private static final int LONGEST_QUOTE = 24;

  private Spelling() {}

  /** The text in quotation marks, cut short, with nothing in it that could upset a terminal. */
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

  /** "did you mean ...?" with the nearest of the known words, or nothing if none is near. */
  static Optional<String> didYouMean(String typed, Collection<String> known) {
    int reach = Math.max(1, (typed.length() + 1) / 3);
    int nearest =
        known.stream().mapToInt(word -> distance(typed, word)).min().orElse(Integer.MAX_VALUE);
    if (nearest > reach || nearest >= typed.length()) {
      return Optional.empty();
    }
    List<String> candidates =
        known.stream()
            .filter(word -> distance(typed, word) == nearest)
            .distinct()
            .limit(3)
            .toList();
    return Optional.of(
        candidates.stream().collect(Collectors.joining(" or ", "did you mean ", "?")));
  }

  /** Edits from one word to the other, a swap of neighbours counting as one; case is free. */
  private static int distance(String typed, String word) {
    String a = typed.toLowerCase(Locale.ROOT);
    String b = word.toLowerCase(Locale.ROOT);
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : cheapest(a, b, i, j, d);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int cheapest(String a, String b, int i, int j, int[][] d) {
    boolean same = a.charAt(i - 1) == b.charAt(j - 1);
    int edited = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(edited, d[i - 2][j - 2] + 1) : edited;
  }
}
