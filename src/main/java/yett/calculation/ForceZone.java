package yett.calculation;

/**
 * The places where a leaf can strike a person, and the peak force (N) that EN 12453 allows there.
 * The standard itself was not at hand: the status beside each figure says where it was read. Buy
 * the standard before a gate is certified by it.
 */
public enum ForceZone {
  /**
   * Between closing edge and post while 50 mm to 500 mm are left. 400 N below 500 mm is published
   * (trade federation and test-house summaries); the 50 mm is from memory.
   */
  CLOSING_GAP("gap of 50 mm to 500 mm", "in a ", 400, "published summaries; 50 mm from memory"),
  /**
   * The same with more than 500 mm left. 1400 N where nobody is crushed is published (the same
   * summaries); that it begins at 500 mm is from memory.
   */
  WIDE_GAP("gap over 500 mm", "in a ", 1400, "published summaries; 500 mm from memory"),
  /**
   * Between flat faces other than the edges, each over 0.1 m² with no side below 100 mm. From
   * memory.
   */
  FIXED_SURFACES("between flat faces over 0.1 m2", "", 1400, "from memory");

  private final String words;
  private final String where;
  private final double peakLimit;
  private final String status;

  ForceZone(String words, String before, double peakLimit, String status) {
    this.words = words;
    this.where = before + words;
    this.peakLimit = peakLimit;
    this.status = status;
  }

  public String words() {
    return words;
  }

  /** In a sentence: {@code in a gap over 500 mm}. */
  public String where() {
    return where;
  }

  /** N. */
  public double peakLimit() {
    return peakLimit;
  }

  /** Where the limit was read. */
  public String status() {
    return status;
  }
}
