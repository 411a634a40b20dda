package yett.casebook;

/**
 * Something about a case that is not as this program wrote it.
 *
 * @param caseId the case as it is called in its table, which may be no {@link CaseId}
 * @param event number of the event, 0 for the case itself
 * @param words what it is, a part of a sentence
 */
public record Finding(String caseId, long event, Kind kind, String words) {

  /** What it comes to. */
  public enum Kind {
    /** It cannot be read, or went lost. */
    DAMAGE,
    /** It can be read, and is not what was written. */
    CHANGE,
    /** It is dated before what stands before it. */
    CLOCK,
    /** Whether it was changed before it was sealed, nobody can tell. */
    SEALED_LATER
  }

  /** Whether a repair has something to do. */
  public boolean isDefect() {
    return kind == Kind.DAMAGE || kind == Kind.CHANGE;
  }
}
