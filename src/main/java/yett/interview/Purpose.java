package yett.interview;

/**
 * What a set-up is entered or left for.
 *
 * @param card id of the check or repair; empty for any other kind
 */
public record Purpose(Kind kind, String card) {

  /** What comes after it. */
  public enum Kind {
    CHECK,
    REPAIR,
    /** The gate is tried. */
    TRIAL,
    CLOSING,
    /** Whatever the person does next. */
    OPEN
  }

  public static Purpose of(Kind kind) {
    return new Purpose(kind, "");
  }
}
