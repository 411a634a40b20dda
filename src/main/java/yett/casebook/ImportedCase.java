package yett.casebook;

import java.util.List;

/**
 * What became of a case that was carried here.
 *
 * @param id its number here
 * @param here what only this casebook has, after the last event that both have
 * @param there what only the carried case had, after that event
 */
public record ImportedCase(
    CaseId id, Outcome outcome, List<StoredEvent> here, List<StoredEvent> there) {

  /** What became of it. */
  public enum Outcome {
    /** It was not here. */
    NEW,
    /** It was here, and went on elsewhere; that was added. */
    CONTINUED,
    /** Nothing in it was new. */
    KNOWN,
    /** It went on here and elsewhere, not in the same way. Nothing was changed. */
    CONFLICT
  }
}
