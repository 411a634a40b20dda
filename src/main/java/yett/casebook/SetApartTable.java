package yett.casebook;

import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The table of cases as they were before a repair. */
record SetApartTable(JdbcClient client) {

  /**
   * @param content the stored rows of the case, as JSON
   */
  void add(CaseId id, Instant now, String why, String content) {
    client
        .sql("insert into set_apart (case_id, at, why, content) values (?, ?, ?, ?)")
        .params(id.toString(), Storable.written(now), why, content)
        .update();
  }

  /** Deletes the state of a case before its repair, because it contains people's words as well. */
  void forget(CaseId id, Optional<CaseRow> line) {
    // Anything else might match other cases as well.
    String uid = line.map(CaseRow::uid).filter(u -> u.matches("[0-9a-f-]{36}")).orElse("");
    client
        .sql(
            "delete from set_apart where case_id in (?, ?)"
                // Earlier versions stored it under the number that the case had before.
                + " or (? <> '' and content like ?)")
        .params(id.toString(), Shown.quoted(id.toString()), uid, "%\"" + uid + "\"%")
        .update();
  }
}
