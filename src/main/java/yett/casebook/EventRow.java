package yett.casebook;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;

/** The row of an event as it is stored, readable or not. */
record EventRow(
    String caseId, long seq, String at, String by, String type, String body, String seal) {
  static final String COLUMNS = "case_id, seq, at, written_by, type, body, seal";

  static EventRow of(ResultSet row) throws SQLException {
    return new EventRow(
        row.getString("case_id"),
        row.getLong("seq"),
        row.getString("at"),
        row.getString("written_by"),
        row.getString("type"),
        row.getString("body"),
        row.getString("seal"));
  }

  static EventRow of(CaseId id, StoredEvent event) {
    return new EventRow(
        id.toString(),
        event.seq(),
        Storable.written(event.at()),
        event.by(),
        event.type(),
        event.body(),
        Seals.NONE);
  }

  /**
   * @throws CasebookException if another program changed it so that it cannot be read
   */
  StoredEvent event() {
    try {
      return new StoredEvent(seq, Instant.parse(at), by, type, body);
    } catch (DateTimeException e) {
      throw new CasebookException(
          "Case "
              + caseId
              + ", event "
              + seq
              + ": its time was changed by another program and cannot be read. cases verify says"
              + " more; cases repair fixes it.",
          e);
    }
  }

  boolean isReadable() {
    return Storable.isTime(at);
  }

  EventRow sealed(String before) {
    return sealedAs(Seals.of(before, this));
  }

  EventRow sealedAs(String with) {
    return new EventRow(caseId, seq, at, by, type, body, with);
  }

  boolean isSealedAfter(String before) {
    return seal.equals(Seals.of(before, this));
  }
}
