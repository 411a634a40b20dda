package yett.bench;

/**
 * A weak place of a rule base that is no error: it can be used, but somebody should look.
 *
 * <p>The kinds follow the literature on checking rule bases: M. Suwa, A. C. Scott and E. H.
 * Shortliffe, An approach to verifying completeness and consistency in a rule-based expert system,
 * AI Magazine 3(4), 1982; A. D. Preece and R. Shinghal, Foundation and application of knowledge
 * base verification, International Journal of Intelligent Systems 9, 1994 (both from memory).
 *
 * @param about the card or rule
 */
public record Anomaly(Kind kind, Found found, String about, String message) {

  /** What is weak about it. */
  public enum Kind {
    REDUNDANT("repeats another"),
    SUBSUMED("adds nothing to another that covers it"),
    CONTRADICTORY("cannot hold together"),
    CIRCULAR("leads back to itself"),
    UNREACHABLE("can never matter"),
    MISSING("is needed and not there");

    private final String meaning;

    Kind(String meaning) {
      this.meaning = meaning;
    }

    public String meaning() {
      return meaning;
    }
  }

  /** How certain it is. */
  public enum Found {
    /** It follows from the cards and from the text of the rules. */
    PROVED,
    /** It was so for all of many gates drawn at random; a gate that was not drawn may differ. */
    SAMPLED
  }
}
