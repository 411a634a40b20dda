package yett.saying;

import org.apache.lucene.search.spell.LuceneLevenshteinDistance;

/** How far two words lie apart that may be one word with slips of the pen. */
public final class Slips {
  private static final LuceneLevenshteinDistance LIKENESS = new LuceneLevenshteinDistance();

  private Slips() {}

  /**
   * Letters to put in, leave out, change or swap with the next to make one word of the other; no
   * letter is touched twice (optimal string alignment).
   *
   * @param one not empty
   * @param other not empty
   */
  public static int between(String one, String other) {
    int shorter =
        Math.min(one.codePointCount(0, one.length()), other.codePointCount(0, other.length()));
    return Math.round((1 - LIKENESS.getDistance(one, other)) * shorter);
  }
}
