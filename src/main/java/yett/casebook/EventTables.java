package yett.casebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The SQL of events, each sealed; the caller holds the transaction. */
final class EventTables {
  private final JdbcTemplate template;
  private final JdbcClient client;

  EventTables(JdbcTemplate template) {
    this.template = template;
    this.client = JdbcClient.create(template);
  }

  List<StoredEvent> after(CaseId id, long seq) {
    return rows(id.toString(), seq).stream().map(EventRow::event).toList();
  }

  /** The rows of a case as stored, readable or not. */
  List<EventRow> rows(String caseId) {
    return rows(caseId, Long.MIN_VALUE);
  }

  private List<EventRow> rows(String caseId, long after) {
    return client
        .sql(
            "select "
                + EventRow.COLUMNS
                + " from case_event where case_id = ? and seq > ? order by seq")
        .params(caseId, after)
        .query((row, n) -> EventRow.of(row))
        .list();
  }

  /**
   * The events of several cases with one query, because thousands of queries to a server take long.
   * Cases that cannot be read are left out.
   */
  Map<CaseId, List<StoredEvent>> of(List<CaseId> ids) {
    Map<String, CaseId> wanted = new HashMap<>();
    Map<CaseId, List<StoredEvent>> events = new HashMap<>();
    for (CaseId id : ids) {
      wanted.put(id.toString(), id);
      events.put(id, new ArrayList<>());
    }
    if (ids.isEmpty()) {
      return events;
    }
    Set<CaseId> unreadable = new HashSet<>();
    for (EventRow row : rows(wanted.keySet())) {
      CaseId id = wanted.get(row.caseId());
      if (row.isReadable()) {
        events.get(id).add(row.event());
      } else {
        unreadable.add(id);
      }
    }
    events.keySet().removeAll(unreadable);
    return events;
  }

  /** The rows of several cases as stored, by case and number. */
  List<EventRow> rows(Set<String> caseIds) {
    return client
        .sql(
            "select "
                + EventRow.COLUMNS
                + " from case_event where case_id in (:ids) order by case_id, seq")
        .param("ids", caseIds)
        .query((row, n) -> EventRow.of(row))
        .list();
  }

  /**
   * Appends events to a case.
   *
   * @param seal of the event before them
   * @return the seal of the last of them
   */
  String add(CaseId id, String seal, List<StoredEvent> events) {
    String last = seal;
    List<Object[]> rows = new ArrayList<>();
    for (StoredEvent event : events) {
      EventRow row = EventRow.of(id, event).sealed(last);
      rows.add(
          new Object[] {
            row.caseId(), row.seq(), row.at(), row.by(), row.type(), row.body(), row.seal()
          });
      last = row.seal();
    }
    template.batchUpdate(
        "insert into case_event (" + EventRow.COLUMNS + ") values (?, ?, ?, ?, ?, ?, ?)", rows);
    return last;
  }

  /** Replaces the rows with the same numbers. */
  void replace(List<EventRow> rows) {
    template.batchUpdate(
        "update case_event set type = ?, body = ?, seal = ? where case_id = ? and seq = ?",
        rows.stream()
            .map(r -> new Object[] {r.type(), r.body(), r.seal(), r.caseId(), r.seq()})
            .toList());
  }

  /**
   * Deletes words; this is the only change to stored events. The events after them get new seals,
   * except that an event whose seal did not fit before does not fit afterwards either.
   *
   * @param left what replaces the words, by number of the event
   * @return the seal of the last event
   */
  String forget(CaseId id, Map<Long, String> left) {
    String sealedBefore = Seals.NONE;
    String seal = Seals.NONE;
    List<EventRow> changed = new ArrayList<>();
    for (EventRow row : rows(id.toString())) {
      String body = left.get(row.seq());
      EventRow next =
          body == null ? row : EventRow.of(id, row.event().forgotten(body)).sealedAs(row.seal());
      if (row.isSealedAfter(sealedBefore)) {
        next = next.sealed(seal);
      }
      if (!next.equals(row)) {
        changed.add(next);
      }
      sealedBefore = row.seal();
      seal = next.seal();
    }
    replace(changed);
    return seal;
  }
}
