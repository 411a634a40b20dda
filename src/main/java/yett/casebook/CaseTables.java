package yett.casebook;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The SQL of cases and their events; the caller holds the transaction. */
final class CaseTables {
  private static final String LINE =
      "select id, site_id, opened_at, last_event_at, last_seq, state, title, cause"
          + " from case_file";

  private final JdbcClient client;

  CaseTables(JdbcClient client) {
    this.client = client;
  }

  /** A case of this name that is there already is the one that is meant. */
  CaseId begin(String uid, String siteId, Instant at) {
    return named(uid).orElseGet(() -> insert(uid, siteId, at));
  }

  /** As {@link #begin}, under the number it has elsewhere if that is free here. */
  CaseId beginAs(String uid, CaseId id, String siteId, Instant at) {
    if (exists(id)) {
      return insert(uid, siteId, at);
    }
    reserve(id);
    insert(id, uid, siteId, at);
    return id;
  }

  boolean exists(CaseId id) {
    return client
            .sql("select count(*) from case_file where id = ?")
            .param(id.toString())
            .query(Integer.class)
            .single()
        > 0;
  }

  /** No later case gets this number. */
  private void reserve(CaseId id) {
    client
        .sql(
            "insert into case_number (year_opened, last_number) values (?, 0) on conflict do nothing")
        .param(id.year())
        .update();
    client
        .sql("update case_number set last_number = ? where year_opened = ? and last_number < ?")
        .params(id.number(), id.year(), id.number())
        .update();
  }

  /** The name a case keeps in every casebook; one from before names gets the one offered. */
  String uid(CaseId id, String offered) {
    client
        .sql("update case_file set uid = ? where id = ? and uid = ''")
        .params(offered, id.toString())
        .update();
    return client
        .sql("select uid from case_file where id = ?")
        .param(id.toString())
        .query(String.class)
        .single();
  }

  /** The case with a name of its own that it keeps in every casebook. */
  Optional<CaseId> named(String uid) {
    return client
        .sql("select id from case_file where uid = ?")
        .param(uid)
        .query((row, n) -> CaseId.stored(row.getString(1)))
        .optional();
  }

  private CaseId insert(String uid, String siteId, Instant at) {
    var id = nextId(at.atOffset(ZoneOffset.UTC).getYear());
    insert(id, uid, siteId, at);
    return id;
  }

  private void insert(CaseId id, String uid, String siteId, Instant at) {
    client
        .sql(
            """
            insert into case_file
              (id, uid, site_id, opened_at, last_event_at, last_seq, state, title)
            values (?, ?, ?, ?, ?, 0, ?, '')
            """)
        .params(
            id.toString(),
            uid,
            siteId,
            Storable.written(at),
            Storable.written(at),
            CaseState.OPEN.name())
        .update();
  }

  /** The update comes before the reading: it makes any other writer wait for our commit. */
  private CaseId nextId(int year) {
    client
        .sql(
            "insert into case_number (year_opened, last_number) values (?, 0) on conflict do nothing")
        .param(year)
        .update();
    client
        .sql("update case_number set last_number = last_number + 1 where year_opened = ?")
        .param(year)
        .update();
    int number =
        client
            .sql("select last_number from case_number where year_opened = ?")
            .param(year)
            .query(Integer.class)
            .single();
    return new CaseId(year, number);
  }

  /**
   * The update is the check: of two writers who expect the same, it lets only the first pass. What
   * stands there already just as it is given was written by an append whose writer was not told,
   * because the server was lost on the way.
   */
  List<StoredEvent> append(CaseId id, long expectedSeq, List<NewEvent> events) {
    var stored = numbered(expectedSeq, events);
    int moved =
        client
            .sql("update case_file set last_seq = ? where id = ? and last_seq = ?")
            .params(expectedSeq + events.size(), id.toString(), expectedSeq)
            .update();
    if (moved == 0) {
      var newer = eventsAfter(id, expectedSeq);
      if (!events.isEmpty() && newer.size() >= events.size() && newer.containsAll(stored)) {
        return stored;
      }
      throw refused(id, expectedSeq, newer);
    }
    stored.forEach(event -> insert(id, event));
    if (!events.isEmpty()) {
      client
          .sql("update case_file set last_event_at = ? where id = ?")
          .params(Storable.written(events.get(events.size() - 1).at()), id.toString())
          .update();
    }
    return stored;
  }

  private static List<StoredEvent> numbered(long expectedSeq, List<NewEvent> events) {
    var stored = new ArrayList<StoredEvent>();
    for (NewEvent event : events) {
      stored.add(event.numbered(expectedSeq + stored.size() + 1));
    }
    return List.copyOf(stored);
  }

  private void insert(CaseId id, StoredEvent event) {
    client
        .sql(
            """
            insert into case_event (case_id, seq, at, written_by, type, body)
            values (?, ?, ?, ?, ?, ?)
            """)
        .params(
            id.toString(),
            event.seq(),
            Storable.written(event.at()),
            event.by(),
            event.type(),
            event.body())
        .update();
  }

  /** The only change of what stands there: words that people want forgotten. */
  StoredEvent forget(CaseId id, StoredEvent event, String body) {
    StoredEvent left = event.forgotten(body);
    client
        .sql("update case_event set type = ?, body = ? where case_id = ? and seq = ?")
        .params(left.type(), left.body(), id.toString(), left.seq())
        .update();
    return left;
  }

  private RuntimeException refused(CaseId id, long expectedSeq, List<StoredEvent> newer) {
    if (!newer.isEmpty()) {
      return new CaseMovedOn(id, newer);
    }
    return new CasebookException(
        "Case "
            + id
            + " ends at event "
            + summary(id).lastSeq()
            + ", but event "
            + expectedSeq
            + " was there before. Was an older copy of the casebook put in its place? Open the"
            + " case again.");
  }

  /** Only as long as nothing was written after the event that it sums up. */
  void summarise(CaseId id, long lastSeq, Summary summary) {
    client
        .sql("update case_file set state = ?, title = ?, cause = ? where id = ? and last_seq = ?")
        .params(summary.state().name(), summary.title(), summary.cause(), id.toString(), lastSeq)
        .update();
  }

  List<StoredEvent> eventsAfter(CaseId id, long seq) {
    var events =
        client
            .sql(
                """
                select seq, at, written_by, type, body from case_event
                where case_id = ? and seq > ? order by seq
                """)
            .params(id.toString(), seq)
            .query((row, n) -> event(row))
            .list();
    if (events.isEmpty()) {
      summary(id);
    }
    return events;
  }

  /** The events of several cases at once: thousands of questions to a server take their time. */
  Map<CaseId, List<StoredEvent>> events(List<CaseId> ids) {
    Map<CaseId, List<StoredEvent>> events = new HashMap<>();
    ids.forEach(id -> events.put(id, new ArrayList<>()));
    if (!ids.isEmpty()) {
      client
          .sql(
              """
              select case_id, seq, at, written_by, type, body from case_event
              where case_id in (:ids) order by case_id, seq
              """)
          .param("ids", ids.stream().map(CaseId::toString).toList())
          .query(
              (RowCallbackHandler)
                  row -> events.get(CaseId.stored(row.getString("case_id"))).add(event(row)));
    }
    return events;
  }

  CaseSummary summary(CaseId id) {
    return client
        .sql(LINE + " where id = ?")
        .param(id.toString())
        .query((row, n) -> line(row))
        .optional()
        // Finding what is not there fails with the nearest ids.
        .orElseGet(() -> summary(CaseFinder.find(id.toString(), ids())));
  }

  List<CaseSummary> all() {
    var newestFirst =
        Comparator.comparing(CaseSummary::lastEvent).thenComparing(CaseSummary::id).reversed();
    return client.sql(LINE).query((row, n) -> line(row)).stream().sorted(newestFirst).toList();
  }

  List<CaseId> ids() {
    return client
        .sql("select id from case_file")
        .query((row, n) -> CaseId.stored(row.getString(1)))
        .list();
  }

  private static StoredEvent event(ResultSet row) throws SQLException {
    return new StoredEvent(
        row.getLong("seq"),
        Instant.parse(row.getString("at")),
        row.getString("written_by"),
        row.getString("type"),
        row.getString("body"));
  }

  private static CaseSummary line(ResultSet row) throws SQLException {
    return new CaseSummary(
        CaseId.stored(row.getString("id")),
        row.getString("site_id"),
        Instant.parse(row.getString("opened_at")),
        Instant.parse(row.getString("last_event_at")),
        row.getLong("last_seq"),
        new Summary(
            CaseState.valueOf(row.getString("state")),
            row.getString("title"),
            row.getString("cause")));
  }
}
