package yett.saying;

import java.util.Locale;

/** Words as patterns compare them: people type "im" and "I'm". */
public final class PlainWords {
  private PlainWords() {}

  /** In small letters, without punctuation, single spaces between the words. */
  public static String of(String line) {
    return line.toLowerCase(Locale.ROOT)
        .replaceAll("['\u2019]", "")
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .strip();
  }
}
