package yett.knowledge;

import java.util.List;
import java.util.Optional;

/**
 * Two answers that a person may give to one check, such as for opening and for closing.
 *
 * @param first what the first answer is about, in a word or two
 * @param second what the second answer is about
 * @param counts of two readings, which one is judged; empty for a look, where the answer further
 *     down the card counts
 * @param tells id of a look that asks which of the two is out of the ordinary; it has an outcome
 *     with the id of each column, and its first one says that there is no difference
 */
public record Columns(
    String first, String second, Optional<Reading> counts, Optional<String> tells) {

  /** Which of two readings is judged. */
  public enum Reading {
    LOWER,
    HIGHER;

    /** Whether the first of two values is the one that counts. */
    public boolean isFirst(double first, double second) {
      return this == LOWER ? first <= second : first >= second;
    }
  }

  public List<String> names() {
    return List.of(first, second);
  }
}
