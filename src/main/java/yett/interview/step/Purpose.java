package yett.interview.step;

/**
 * The purpose for which a set-up is entered or left.
 *
 * @param card id of the check or repair; empty for any other kind
 */
public record Purpose(Kind kind, String card) {

  /** The kind of work that follows. */
  public enum Kind {
    CHECK,
    REPAIR,
    /** A trial run of the gate. */
    TRIAL,
    CLOSING,
    /** Whatever the person chooses next. */
    OPEN
  }

  public static Purpose of(Kind kind) {
    return new Purpose(kind, "");
  }
}
