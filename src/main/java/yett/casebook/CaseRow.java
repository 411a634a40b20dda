package yett.casebook;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The row of a case as it is stored, readable or not. */
record CaseRow(
    String id,
    String uid,
    String siteId,
    String openedAt,
    String lastEventAt,
    long lastSeq,
    String state,
    String title,
    String cause,
    String seal,
    long sealedAfter,
    String sealedAt) {
  static final String COLUMNS =
      "id, uid, site_id, opened_at, last_event_at, last_seq, state, title, cause, seal,"
          + " sealed_after, sealed_at";

  static CaseRow of(ResultSet row) throws SQLException {
    return new CaseRow(
        row.getString("id"),
        row.getString("uid"),
        row.getString("site_id"),
        row.getString("opened_at"),
        row.getString("last_event_at"),
        row.getLong("last_seq"),
        row.getString("state"),
        row.getString("title"),
        row.getString("cause"),
        row.getString("seal"),
        row.getLong("sealed_after"),
        row.getString("sealed_at"));
  }

  /** Stands for a case whose row is missing. */
  static CaseRow lost(String id) {
    return new CaseRow(id, "", "", "", "", 0, "", "", "", "", 0, "");
  }

  /** Stands for a case of which only the note is left that it was begun. */
  static CaseRow of(BegunTables.Begun begun) {
    String at = begun.openedAt();
    return new CaseRow(
        begun.id(), "", begun.siteId(), at, at, 1, CaseStatus.OPEN.name(), "", "", "", 0, "");
  }

  boolean isLost() {
    return equals(lost(id));
  }

  /** The row as a line of the list; empty if it cannot be read. */
  Optional<CaseSummary> line() {
    return trouble().isEmpty()
        ? Optional.of(
            new CaseSummary(
                CaseId.stored(id),
                siteId,
                Instant.parse(openedAt),
                Instant.parse(lastEventAt),
                lastSeq,
                new Summary(CaseStatus.valueOf(state), title, cause)))
        : Optional.empty();
  }

  /** Why it cannot be read; empty if it can. */
  String trouble() {
    List<String> wrong = new ArrayList<>();
    if (CaseId.parse(id).isEmpty()) {
      wrong.add("its number is " + Shown.quoted(id));
    }
    if (!Storable.isTime(openedAt)) {
      wrong.add("it was opened at " + Shown.quoted(openedAt));
    }
    if (!Storable.isTime(lastEventAt)) {
      wrong.add("its last entry is of " + Shown.quoted(lastEventAt));
    }
    if (Arrays.stream(CaseStatus.values()).noneMatch(s -> s.name().equals(state))) {
      wrong.add("its state is " + Shown.quoted(state));
    }
    return String.join(", ", wrong);
  }
}
