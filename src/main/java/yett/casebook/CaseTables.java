package yett.casebook;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The SQL of cases; the caller holds the transaction. */
record CaseTables(JdbcClient client, EventTables events, BegunTables begun) {
  private static final String LINE = "select " + CaseRow.COLUMNS + " from case_file";

  /**
   * Counts writes, to order cases by them. Two simultaneous writers may get the same number;
   * neither was first.
   */
  private static final String NEXT_WRITTEN = "select coalesce(max(written), 0) + 1 from case_file";

  /**
   * Begins a case. If there is a case with this unique name already, that one is meant and
   * returned.
   */
  CaseId begin(String uid, String siteId, Instant at) {
    return named(uid).orElseGet(() -> insert(uid, siteId, at));
  }

  /**
   * As {@link #begin}, but keeps the number that the case has elsewhere if it is within bounds and
   * free here.
   */
  CaseId beginAs(String uid, CaseId id, String siteId, Instant at) {
    if (!id.isWithinBounds() || exists(id) || begun.isOfAnother(id.toString(), uid)) {
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

  /** Reserves a number, so that no later case gets it. */
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

  /**
   * The unique name that a case keeps in every casebook. A case from before there were such names
   * gets the one offered.
   */
  String uid(CaseId id, String offered) {
    client
        .sql("update case_file set uid = ? where id = ? and uid = ''")
        .params(offered, id.toString())
        .update();
    begun.named(id.toString(), offered);
    return client
        .sql("select uid from case_file where id = ?")
        .param(id.toString())
        .query(String.class)
        .single();
  }

  /** The case with this unique name. */
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

  void insert(CaseId id, String uid, String siteId, Instant at) {
    client
        .sql(
            """
            insert into case_file
              (id, uid, site_id, opened_at, last_event_at, last_seq, state, title, written)
            values (?, ?, ?, ?, ?, 0, ?, '', ("""
                + NEXT_WRITTEN
                + "))")
        .params(
            id.toString(),
            uid,
            siteId,
            Storable.written(at),
            Storable.written(at),
            CaseStatus.OPEN.name())
        .update();
    begun.note(new BegunTables.Begun(id.toString(), uid, siteId, Storable.written(at)));
  }

  /** The next number of this year that no case has ever had. */
  CaseId nextId(int year) {
    client
        .sql(
            "insert into case_number (year_opened, last_number) values (?, 0) on conflict do nothing")
        .param(year)
        .update();
    CaseId id = counted(year);
    while (exists(id) || begun.of(id.toString()).isPresent()) {
      id = counted(year);
    }
    return id;
  }

  /**
   * Counts up the numbers of a year. The update comes before the reading, because it makes any
   * other writer wait for our commit.
   */
  private CaseId counted(int year) {
    if (!count(year)) {
      // A number beyond all bounds once came from elsewhere; counting continues from the largest
      // number within them.
      client
          .sql("update case_number set last_number = ? where year_opened = ? and last_number >= ?")
          .params(largest(year), year, CaseId.MOST)
          .update();
      if (!count(year)) {
        throw new CasebookException("The year " + year + " has no number left for another case.");
      }
    }
    return new CaseId(
        year,
        client
            .sql("select last_number from case_number where year_opened = ?")
            .param(year)
            .query(Integer.class)
            .single());
  }

  private boolean count(int year) {
    return client
            .sql(
                "update case_number set last_number = last_number + 1"
                    + " where year_opened = ? and last_number < ?")
            .params(year, CaseId.MOST)
            .update()
        > 0;
  }

  private int largest(int year) {
    return ids().stream()
        .filter(id -> id.year() == year && id.isWithinBounds())
        .mapToInt(CaseId::number)
        .max()
        .orElse(0);
  }

  /**
   * Appends events. The update is the check: of two writers that expect the same last event, it
   * lets only the first pass. If the very same events are already there, an earlier attempt wrote
   * them and lost the server before it heard so; then that counts as success.
   */
  List<StoredEvent> append(CaseId id, long expectedSeq, List<NewEvent> fresh) {
    var stored = numbered(expectedSeq, fresh);
    int moved =
        client
            .sql(
                "update case_file set last_seq = ?, written = ("
                    + NEXT_WRITTEN
                    + ") where id = ? and last_seq = ?")
            .params(expectedSeq + fresh.size(), id.toString(), expectedSeq)
            .update();
    if (moved == 0) {
      if (expectedSeq > 0 && !ids().contains(id)) {
        throw replaced(id, "is no longer in the casebook");
      }
      var newer = eventsAfter(id, expectedSeq);
      if (!fresh.isEmpty() && newer.size() >= fresh.size() && newer.containsAll(stored)) {
        return stored;
      }
      throw refused(id, expectedSeq, newer);
    }
    if (!stored.isEmpty()) {
      String seal = events.add(id, seal(id), stored);
      client
          .sql("update case_file set last_event_at = ?, seal = ? where id = ?")
          .params(Storable.written(stored.get(stored.size() - 1).at()), seal, id.toString())
          .update();
    }
    return stored;
  }

  private String seal(CaseId id) {
    return client
        .sql("select seal from case_file where id = ?")
        .param(id.toString())
        .query(String.class)
        .single();
  }

  /** Deletes people's own words; see {@link EventTables#forget}. */
  void forget(CaseId id, Map<Long, String> left) {
    client
        .sql("update case_file set seal = ? where id = ?")
        .params(events.forget(id, left), id.toString())
        .update();
  }

  /** Rewrites the row of a case whose events were repaired; from now on they are sealed. */
  void mend(CaseId id, CaseRow line, long lastSeq, String seal, Instant now) {
    client
        .sql(
            "update case_file set opened_at = ?, last_event_at = ?, last_seq = ?, state = ?,"
                + " seal = ?, sealed_after = ?, sealed_at = ? where id = ?")
        .params(
            line.openedAt(),
            line.lastEventAt(),
            lastSeq,
            line.state(),
            seal,
            lastSeq,
            Storable.written(now),
            id.toString())
        .update();
  }

  private static List<StoredEvent> numbered(long expectedSeq, List<NewEvent> events) {
    var stored = new ArrayList<StoredEvent>();
    for (NewEvent event : events) {
      stored.add(event.numbered(expectedSeq + stored.size() + 1));
    }
    return List.copyOf(stored);
  }

  private RuntimeException refused(CaseId id, long expectedSeq, List<StoredEvent> newer) {
    if (!newer.isEmpty()) {
      return new CaseMovedOn(id, newer);
    }
    return replaced(
        id,
        "ends at event "
            + summary(id).lastSeq()
            + ", but event "
            + expectedSeq
            + " was there before");
  }

  /** Says that somebody was at work on a casebook while an older one was put in its place. */
  private static CasebookException replaced(CaseId id, String how) {
    return new CasebookException(
        "Case "
            + id
            + " "
            + how
            + ". Was an older copy of the casebook put in its place? What was typed last is not"
            + " stored. Open the case again, or begin it anew; cases verify tells more.");
  }

  /** Stores the summary, unless there are events after the one that it describes. */
  void summarise(CaseId id, long lastSeq, Summary summary) {
    client
        .sql("update case_file set state = ?, title = ?, cause = ? where id = ? and last_seq = ?")
        .params(summary.state().name(), summary.title(), summary.cause(), id.toString(), lastSeq)
        .update();
  }

  List<StoredEvent> eventsAfter(CaseId id, long seq) {
    var after = events.after(id, seq);
    if (after.isEmpty()) {
      summary(id);
    }
    return after;
  }

  CaseSummary summary(CaseId id) {
    return row(id.toString())
        .map(CaseTables::line)
        // CaseFinder throws for what is not there, with the nearest ids.
        .orElseGet(() -> summary(CaseFinder.find(id.toString(), ids())));
  }

  private static CaseSummary line(CaseRow row) {
    return row.line()
        .orElseThrow(
            () ->
                new CasebookException(
                    "Case "
                        + row.id()
                        + " cannot be read: "
                        + row.trouble()
                        + ". cases verify says more; cases repair fixes it."));
  }

  /** All cases that can be read, the one last written to first. */
  List<CaseSummary> all() {
    return rows().stream().flatMap(row -> row.line().stream()).toList();
  }

  /**
   * The cases in one state, in the same order. Filtered in SQL, because a queue is read often and
   * most cases are closed.
   */
  List<CaseSummary> in(CaseStatus state) {
    return lines("state", state.name());
  }

  /** The cases of one gate, by its present name, in the same order. */
  List<CaseSummary> at(String siteId) {
    return lines("site_id", siteId);
  }

  private List<CaseSummary> lines(String column, String value) {
    return client
        .sql(LINE + " where " + column + " = ? order by written desc, id desc")
        .param(value)
        .query((r, n) -> CaseRow.of(r))
        .list()
        .stream()
        .flatMap(row -> row.line().stream())
        .toList();
  }

  /** All rows as stored, readable or not. */
  List<CaseRow> rows() {
    return client
        .sql(LINE + " order by written desc, id desc")
        .query((r, n) -> CaseRow.of(r))
        .list();
  }

  Optional<CaseRow> row(String id) {
    return client.sql(LINE + " where id = ?").param(id).query((r, n) -> CaseRow.of(r)).optional();
  }

  List<CaseId> ids() {
    return client.sql("select id from case_file").query(String.class).stream()
        .flatMap(id -> CaseId.parse(id).stream())
        .toList();
  }

  /** Time of the latest event of all, by its writer's clock. */
  Optional<Instant> latest() {
    return client
        .sql("select max(last_event_at) from case_file")
        .query(String.class)
        .optional()
        .filter(Storable::isTime)
        .map(Instant::parse);
  }
}
