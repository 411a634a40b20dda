package yett.casebook;

import java.util.List;

/**
 * The result of importing a case.
 *
 * @param id its number here
 * @param here events that only this casebook has, after the last one that both have
 * @param there events that only the imported case has, after that one
 */
public record ImportedCase(
    CaseId id, Outcome outcome, List<StoredEvent> here, List<StoredEvent> there) {

  /** What happened to the case. */
  public enum Outcome {
    /** It was not here before. */
    NEW,
    /** It was here and went on elsewhere; the new events were added. */
    CONTINUED,
    /** Nothing in it was new. */
    KNOWN,
    /** It went on differently here and elsewhere. Nothing was changed. */
    CONFLICT
  }
}
