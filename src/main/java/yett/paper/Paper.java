package yett.paper;

import java.util.Arrays;
import java.util.List;

/**
 * Paper sizes that offices print on, upright.
 *
 * @see <a href="https://www.w3.org/TR/css-page-3/#page-size">CSS Paged Media, page-size</a>
 */
public enum Paper {
  A4("A4"),
  LETTER("Letter");

  private final String word;

  Paper(String word) {
    this.word = word;
  }

  /** The word for it in settings and in CSS. */
  public String word() {
    return word;
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Paper::word).toList();
  }

  /**
   * @throws IllegalArgumentException if there is no such paper size
   */
  public static Paper named(String word) {
    return Arrays.stream(values())
        .filter(p -> p.word.equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("unknown paper size: " + word));
  }
}
