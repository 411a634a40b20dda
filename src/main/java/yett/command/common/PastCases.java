package yett.command.common;

import java.util.List;
import java.util.Optional;
import yett.casebook.CaseSummary;
import yett.casebook.StoredEvent;
import yett.desk.StoredEntries;
import yett.figures.GateHistory;

/** Turns a stored case into an entry of its gate's history. */
public final class PastCases {
  private PastCases() {}

  /** Empty if the events of the case are inconsistent; {@code cases verify} reports that. */
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
