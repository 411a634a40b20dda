package yett.command.common;

import java.util.List;
import java.util.Optional;
import yett.casebook.CaseSummary;
import yett.casebook.StoredEvent;
import yett.desk.StoredEntries;
import yett.figures.GateHistory;

/** What a stored case is to the history of its gate. */
public final class PastCases {
  private PastCases() {}

  /** Empty if its events do not fit together: cases verify tells of it. */
  public static Optional<GateHistory.Past> of(CaseSummary line, List<StoredEvent> events) {
    try {
      return Optional.of(
          GateHistory.Past.of(
              line.id().toString(),
              line.opened(),
              line.summary().cause(),
              StoredEntries.readable(events)));
    } catch (RuntimeException e) {
      return Optional.empty();
    }
  }
}
