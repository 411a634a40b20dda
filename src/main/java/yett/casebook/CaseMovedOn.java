package yett.casebook;

import java.util.List;

/**
 * Somebody else wrote to the case first, and nothing was appended. Read the newer events, check
 * whether the answer still fits, and append it again after them.
 */
public final class CaseMovedOn extends RuntimeException {
  private final transient CaseId caseId;
  private final transient List<StoredEvent> newer;

  CaseMovedOn(CaseId caseId, List<StoredEvent> newer) {
    super(
        "Case "
            + caseId
            + " has moved on: "
            + newer.get(newer.size() - 1).by()
            + " wrote to it meanwhile. Read "
            + (newer.size() == 1 ? "the newer event" : "the " + newer.size() + " newer events")
            + ", then answer again.");
    this.caseId = caseId;
    this.newer = List.copyOf(newer);
  }

  public CaseId caseId() {
    return caseId;
  }

  /** Events written after the expected one, oldest first; never empty. */
  public List<StoredEvent> newer() {
    return newer;
  }
}
