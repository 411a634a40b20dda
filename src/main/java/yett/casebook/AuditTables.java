package yett.casebook;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;
import yett.casebook.BegunTables.Begun;

/**
 * Reads cases as they are stored, damaged or not, and repairs them where possible; the caller holds
 * the transaction.
 */
final class AuditTables {
  private static final JsonMapper JSON = JsonMapper.shared();

  private final JdbcClient client;
  private final CaseTables cases;
  private final EventTables events;
  private final BegunTables begun;
  private final SetApartTable setApart;

  AuditTables(JdbcClient client, CaseTables cases, EventTables events, BegunTables begun) {
    this.client = client;
    this.cases = cases;
    this.events = events;
    this.begun = begun;
    this.setApart = new SetApartTable(client);
  }

  /**
   * The rows of all cases, by number. Includes cases without a row of their own that have events or
   * a note that they were begun.
   */
  List<CaseRow> rows() {
    Stream<CaseRow> lost =
        client
            .sql(
                "select case_id from case_event where case_id not in (select id from case_file)"
                    + " union select id from case_begun where id not in (select id from case_file)")
            .query(String.class)
            .stream()
            .map(CaseRow::lost);
    return Stream.concat(cases.rows().stream(), lost)
        .sorted(Comparator.comparing(CaseRow::id))
        .toList();
  }

  List<Finding> findings(List<CaseRow> rows) {
    Set<String> ids = rows.stream().map(CaseRow::id).collect(Collectors.toSet());
    Map<String, List<EventRow>> all =
        events.rows(ids).stream().collect(Collectors.groupingBy(EventRow::caseId));
    Map<String, Begun> known = begun.of(ids);
    return rows.stream()
        .flatMap(
            row ->
                Audit.of(
                    row,
                    all.getOrDefault(row.id(), List.of()),
                    Optional.ofNullable(known.get(row.id())))
                    .stream())
        .toList();
  }

  private CaseRow row(String id) {
    return cases
        .row(id)
        .or(() -> rows().stream().filter(r -> r.id().equals(id)).findFirst())
        .orElseThrow(() -> new CasebookException("There is no case " + Shown.quoted(id) + "."));
  }

  /** A case as it is stored, as JSON. */
  String raw(String id) {
    return raw(row(id), events.rows(id));
  }

  private static String raw(CaseRow row, List<EventRow> events) {
    return JSON.writeValueAsString(new Raw("case-as-it-stands", row, events));
  }

  private record Raw(String kind, CaseRow line, List<EventRow> events) {}

  /** Mends a case; {@code lost} replaces each event that is missing. */
  Repaired repair(String caseId, NewEvent lost, Instant now) {
    CaseRow row = row(caseId);
    List<EventRow> found = events.rows(caseId);
    Optional<Begun> known = begun.of(caseId);
    String why =
        Audit.of(row, found, known).stream()
            .filter(Finding::isDefect)
            .map(f -> (f.event() > 0 ? "event " + f.event() + " " : "") + f.words())
            .collect(Collectors.joining("; "));
    if (why.isEmpty()) {
      return new Repaired(cases.summary(CaseId.stored(caseId)).id(), List.of());
    }
    var mended =
        row.isLost() && found.isEmpty()
            ? Mending.ofGone(known.orElseThrow(), lost, now)
            : Mending.of(row, found, lost, now);
    Instant opened = Instant.parse(mended.line().openedAt());
    CaseId id =
        CaseId.parse(caseId)
            .orElseGet(() -> cases.nextId(opened.atOffset(ZoneOffset.UTC).getYear()));
    setApart.add(id, now, why, raw(row, found));
    client.sql("delete from case_event where case_id = ?").param(caseId).update();
    if (row.isLost()) {
      cases.insert(id, uid(found, known), site(found, known).orElse(caseId), now);
    } else if (!id.toString().equals(caseId)) {
      rename(row, id, mended.line().openedAt());
    }
    begun.note(new Begun(id.toString(), row.uid(), row.siteId(), mended.line().openedAt()));
    String seal = events.add(id, Seals.NONE, mended.events());
    cases.mend(id, mended.line(), mended.events().size(), seal, now);
    List<String> done = new ArrayList<>(mended.done());
    if (!id.toString().equals(caseId)) {
      done.add(0, "it has the number " + id + " now");
    }
    return new Repaired(id, List.copyOf(done));
  }

  private static Optional<String> site(List<EventRow> found, Optional<Begun> known) {
    return known
        .map(Begun::siteId)
        .or(
            () ->
                SiteName.told(found.stream().map(e -> new SiteName.EventText(e.type(), e.body()))));
  }

  /** The unique name of a repaired case; none if all of it is gone, as a file may bring it back. */
  private static String uid(List<EventRow> found, Optional<Begun> known) {
    return found.isEmpty() ? "" : known.map(Begun::uid).orElse("");
  }

  private void rename(CaseRow row, CaseId id, String openedAt) {
    begun.renumbered(row.id(), id.toString());
    cases.insert(id, "", row.siteId(), Instant.parse(openedAt));
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

  void forget(CaseId id) {
    setApart.forget(id, cases.row(id.toString()));
  }
}
