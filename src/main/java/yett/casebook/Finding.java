package yett.casebook;

/**
 * Something about a case that this program did not write so.
 *
 * @param caseId the case as its row calls it, which may not be a valid {@link CaseId}
 * @param event number of the event, 0 for the case itself
 * @param words what it is, a part of a sentence
 */
public record Finding(String caseId, long event, Kind kind, String words) {

  /** What a finding means. */
  public enum Kind {
    /** It cannot be read, or is missing. */
    DAMAGE,
    /** It can be read, but is not what was written. */
    CHANGE,
    /** Its date is before that of the event before it. */
    CLOCK,
    /** It was sealed later than written, so nobody can tell whether it was changed in between. */
    SEALED_LATER
  }

  /** Whether a repair can do something about it. */
  public boolean isDefect() {
    return kind == Kind.DAMAGE || kind == Kind.CHANGE;
  }
}
