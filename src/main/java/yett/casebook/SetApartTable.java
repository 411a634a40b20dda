package yett.casebook;

import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** How cases stood before they were repaired. */
record SetApartTable(JdbcClient client) {

  /**
   * @param content the case as it stood, as JSON
   */
  void add(CaseId id, Instant now, String why, String content) {
    client
        .sql("insert into set_apart (case_id, at, why, content) values (?, ?, ?, ?)")
        .params(id.toString(), Storable.written(now), why, content)
        .update();
  }

  /** How a case stood before it was repaired holds people's words too. */
  void forget(CaseId id, Optional<CaseRow> line) {
    // Anything else could stand for other cases, too.
    String uid = line.map(CaseRow::uid).filter(u -> u.matches("[0-9a-f-]{36}")).orElse("");
    client
        .sql(
            "delete from set_apart where case_id in (?, ?)"
                // Earlier versions kept it under the number that the case had before.
                + " or (? <> '' and content like ?)")
        .params(id.toString(), Shown.quoted(id.toString()), uid, "%\"" + uid + "\"%")
        .update();
  }
}
