package yett.casebook;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/**
 * Does what SQL cannot do when a casebook of an older program is upgraded: seals the existing
 * events, orders the cases by their last events, and identifies every gate by its exact name.
 *
 * @param now time from which the seals are valid
 */
record Upgrade4(String now) implements JavaMigration {
  @Override
  public void migrate(Context context) {
    migrate(context.getConnection());
  }

  private void migrate(Connection connection) {
    var template = new JdbcTemplate(new SingleConnectionDataSource(connection, true));
    var client = JdbcClient.create(template);
    var events = new EventTables(template);
    Map<String, String> names = sites(client);
    long written = 0;
    for (var line : lines(client)) {
      List<EventRow> rows = events.rows(line.id());
      String seal = Seals.NONE;
      List<EventRow> sealed = new ArrayList<>();
      for (EventRow row : rows) {
        sealed.add(row.sealed(seal));
        seal = sealed.get(sealed.size() - 1).seal();
      }
      events.replace(sealed);
      String site =
          SiteName.told(rows.stream().map(r -> new SiteName.EventText(r.type(), r.body())))
              .map(name -> names.getOrDefault(SiteName.spelled(name), name))
              .orElse(line.site());
      client
          .sql(
              "update case_file set site_id = ?, seal = ?, sealed_after = ?, sealed_at = ?,"
                  + " written = ? where id = ?")
          .params(site, seal, rows.size(), rows.isEmpty() ? "" : now, ++written, line.id())
          .update();
    }
  }

  private record Line(String id, String site) {}

  private static List<Line> lines(JdbcClient client) {
    return client
        .sql("select id, site_id from case_file order by last_event_at, id")
        .query((row, n) -> new Line(row.getString(1), row.getString(2)))
        .list();
  }

  /**
   * Separates the descriptions by name. Names that differ only in blanks and capitals stay one
   * gate, with the spelling used last.
   *
   * @return the names by {@link SiteName#spelled}
   */
  private static Map<String, String> sites(JdbcClient client) {
    var old =
        client
            .sql(
                "select site_id, name, body, saved_at from site_revision"
                    + " order by site_id, revision")
            .query(
                (row, n) ->
                    List.of(
                        row.getString("name"), row.getString("body"), row.getString("saved_at")))
            .list();
    Map<String, String> names = new LinkedHashMap<>();
    Map<String, List<List<String>>> bySpelling = new LinkedHashMap<>();
    for (List<String> revision : old) {
      String key = SiteName.spelled(revision.get(0));
      names.put(key, revision.get(0));
      bySpelling.computeIfAbsent(key, k -> new ArrayList<>()).add(revision);
    }
    client.sql("delete from site_revision").update();
    client.sql("delete from site").update();
    bySpelling.forEach(
        (key, revisions) -> {
          client
              .sql("insert into site (id, last_revision) values (?, ?)")
              .params(names.get(key), revisions.size())
              .update();
          int number = 0;
          for (List<String> r : revisions) {
            client
                .sql(
                    "insert into site_revision (site_id, revision, name, body, saved_at)"
                        + " values (?, ?, ?, ?, ?)")
                .params(names.get(key), ++number, r.get(0), r.get(1), r.get(2))
                .update();
          }
        });
    return names;
  }

  @Override
  public MigrationVersion getVersion() {
    return MigrationVersion.fromVersion("4");
  }

  @Override
  public String getDescription() {
    return "seals and names";
  }

  @Override
  public Integer getChecksum() {
    return null;
  }

  @Override
  public boolean canExecuteInTransaction() {
    return true;
  }
}
