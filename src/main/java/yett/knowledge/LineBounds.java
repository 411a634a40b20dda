package yett.knowledge;

import java.util.Optional;

/** Refuses texts with more or longer lines than people write. */
final class LineBounds {
  private static final int MOST_LINES = 20_000;

  /** Longest line; the time of the YAML parser grows with its square. */
  private static final int LONGEST_LINE = 10_000;

  private LineBounds() {}

  /** The problem of a text with too many lines, or with one that is too long. */
  static Optional<Problem> excess(String file, String text) {
    int line = 1;
    for (int from = 0; from < text.length(); line++) {
      int end = text.indexOf('\n', from);
      int to = end < 0 ? text.length() : end;
      if (to - from > LONGEST_LINE) {
        String message = "this line is longer than " + LONGEST_LINE + " characters";
        return Optional.of(new Problem("line-too-long", file, line, 1, message, "Divide it."));
      }
      if (line > MOST_LINES) {
        String message = "this file has more than " + MOST_LINES + " lines";
        String advice = "Divide it; one card a file reads best.";
        return Optional.of(new Problem("too-many-lines", file, line, 1, message, advice));
      }
      from = to + 1;
    }
    return Optional.empty();
  }
}
