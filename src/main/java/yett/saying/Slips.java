package yett.saying;

import org.apache.lucene.search.spell.LuceneLevenshteinDistance;

/** Counts the typing mistakes between two words. */
public final class Slips {
  private static final LuceneLevenshteinDistance LIKENESS = new LuceneLevenshteinDistance();

  private Slips() {}

  /**
   * The number of letters to insert, delete, change or swap with the next to turn one word into the
   * other; no letter is changed twice (optimal string alignment).
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
