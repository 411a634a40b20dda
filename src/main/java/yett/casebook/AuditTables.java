package yett.casebook;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;

/** Reads cases as they stand, and puts right what can be; the caller holds the transaction. */
final class AuditTables {
  private static final JsonMapper JSON = JsonMapper.shared();

  private final JdbcClient client;
  private final CaseTables cases;
  private final EventTables events;

  AuditTables(JdbcClient client, CaseTables cases, EventTables events) {
    this.client = client;
    this.cases = cases;
    this.events = events;
  }

  /** The lines of all cases, by number; also of those that have events and no line any more. */
  List<CaseRow> rows() {
    Stream<CaseRow> lost =
        client
            .sql(
                "select distinct case_id from case_event where case_id not in (select id from case_file)")
            .query(String.class)
            .stream()
            .map(AuditTables::lost);
    return Stream.concat(cases.rows().stream(), lost)
        .sorted(java.util.Comparator.comparing(CaseRow::id))
        .toList();
  }

  private static CaseRow lost(String id) {
    return new CaseRow(id, "", "", "", "", 0, "", "", "", "", 0, "");
  }

  List<Finding> findings(List<CaseRow> rows) {
    Map<String, List<EventRow>> all =
        events.rows(rows.stream().map(CaseRow::id).collect(Collectors.toSet())).stream()
            .collect(Collectors.groupingBy(EventRow::caseId));
    List<Finding> findings = new ArrayList<>();
    for (CaseRow row : rows) {
      findings.addAll(Audit.of(row, all.getOrDefault(row.id(), List.of())));
    }
    return findings;
  }

  private CaseRow row(String id) {
    return cases
        .row(id)
        .or(() -> rows().stream().filter(r -> r.id().equals(id)).findFirst())
        .orElseThrow(() -> new CasebookException("There is no case " + Shown.quoted(id) + "."));
  }

  /** A case as it stands, as JSON. */
  String raw(String id) {
    return raw(row(id), events.rows(id));
  }

  private static String raw(CaseRow row, List<EventRow> events) {
    return JSON.writeValueAsString(new Raw("case-as-it-stands", row, events));
  }

  private record Raw(String kind, CaseRow line, List<EventRow> events) {}

  /**
   * @param lost takes the place of an event that is gone
   */
  Repaired repair(String caseId, NewEvent lost, Instant now) {
    CaseRow row = row(caseId);
    List<EventRow> found = events.rows(caseId);
    String why =
        Audit.of(row, found).stream()
            .filter(Finding::isDefect)
            .map(f -> (f.event() > 0 ? "event " + f.event() + " " : "") + f.words())
            .collect(Collectors.joining("; "));
    if (why.isEmpty()) {
      return new Repaired(cases.summary(CaseId.stored(caseId)).id(), List.of());
    }
    client
        .sql("insert into set_apart (case_id, at, why, content) values (?, ?, ?, ?)")
        .params(Shown.quoted(caseId), Storable.written(now), why, raw(row, found))
        .update();
    var mended = Mending.of(row, found, lost, now);
    CaseId id = CaseId.parse(caseId).orElseGet(() -> cases.nextId(year(mended.line().openedAt())));
    client.sql("delete from case_event where case_id = ?").param(caseId).update();
    if (cases.row(caseId).isEmpty()) {
      String site =
          SiteName.told(found.stream().map(e -> new SiteName.EventText(e.type(), e.body())))
              .orElse(caseId);
      cases.insert(id, row.uid(), site, now);
    } else if (!id.toString().equals(caseId)) {
      rename(row, id);
    }
    String seal = events.add(id, Seals.NONE, mended.events());
    cases.mend(id, mended.line(), mended.events().size(), seal, now);
    List<String> done = new ArrayList<>(mended.done());
    if (!id.toString().equals(caseId)) {
      done.add(0, "it has the number " + id + " now");
    }
    return new Repaired(id, List.copyOf(done));
  }

  private void rename(CaseRow row, CaseId id) {
    cases.insert(id, "", row.siteId(), Instant.EPOCH);
    client
        .sql("update case_person set case_id = ? where case_id = ?")
        .params(id.toString(), row.id())
        .update();
    client.sql("delete from case_file where id = ?").param(row.id()).update();
    client
        .sql("update case_file set uid = ?, title = ?, cause = ? where id = ?")
        .params(row.uid(), row.title(), row.cause(), id.toString())
        .update();
  }

  private static int year(String time) {
    return Instant.parse(time).atOffset(ZoneOffset.UTC).getYear();
  }
}
