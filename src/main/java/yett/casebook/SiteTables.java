package yett.casebook;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The SQL of sites; the caller holds the transaction. */
record SiteTables(JdbcClient client) {
  private static final String REVISION = "select site_id, name, body, saved_at from site_revision ";

  SiteRecord save(SiteRecord site) {
    client
        .sql("insert into site (id, last_revision) values (?, 0) on conflict do nothing")
        .param(site.id())
        .update();
    client
        .sql("update site set last_revision = last_revision + 1 where id = ?")
        .param(site.id())
        .update();
    client
        .sql(
            """
            insert into site_revision (site_id, revision, name, body, saved_at)
            select id, last_revision, ?, ?, ? from site where id = ?
            """)
        .params(site.name(), site.body(), Storable.written(site.at()), site.id())
        .update();
    return site;
  }

  List<SiteRecord> history(String id) {
    return client
        .sql(REVISION + "where site_id = ? order by revision desc")
        .param(id)
        .query((row, n) -> site(row))
        .list();
  }

  List<SiteRecord> newest() {
    return client
        .sql(REVISION + "where revision = (select last_revision from site where id = site_id)")
        .query((row, n) -> site(row))
        .stream()
        .sorted(Comparator.comparing(SiteRecord::name).thenComparing(SiteRecord::id))
        .toList();
  }

  boolean exists(String id) {
    return client
            .sql("select count(*) from site where id = ?")
            .param(id)
            .query(Integer.class)
            .single()
        > 0;
  }

  /** The present names of the sites that had this name before. */
  List<String> formerly(String name) {
    return client
        .sql("select distinct site_id from site_revision where name = ? and site_id <> ?")
        .params(name, name)
        .query(String.class)
        .list();
  }

  /** Moves everything known of a site to another id, under which nothing is known yet. */
  void move(String from, String to) {
    client
        .sql("insert into site (id, last_revision) select ?, last_revision from site where id = ?")
        .params(to, from)
        .update();
    client.sql("update site_revision set site_id = ? where site_id = ?").params(to, from).update();
    client.sql("delete from site where id = ?").param(from).update();
    client.sql("update case_file set site_id = ? where site_id = ?").params(to, from).update();
    client.sql("update case_begun set site_id = ? where site_id = ?").params(to, from).update();
  }

  /** Moves a site's revisions behind those of another site, and its cases to it. */
  void join(String from, String into) {
    client
        .sql(
            """
            update site_revision set site_id = ?,
              revision = revision + (select last_revision from site where id = ?)
            where site_id = ?
            """)
        .params(into, into, from)
        .update();
    client
        .sql(
            """
            update site set last_revision =
              (select max(revision) from site_revision where site_id = ?)
            where id = ?
            """)
        .params(into, into)
        .update();
    client.sql("delete from site where id = ?").param(from).update();
    client.sql("update case_file set site_id = ? where site_id = ?").params(into, from).update();
  }

  /** Moves the cases of a gate that was never described to another id. */
  void moveCases(String from, String to, Instant openedUntil) {
    for (String table : List.of("case_file", "case_begun")) {
      client
          .sql("update " + table + " set site_id = ? where site_id = ? and opened_at <= ?")
          .params(to, from, Storable.written(openedUntil))
          .update();
    }
  }

  boolean hasCases(String id) {
    return client
            .sql("select count(*) from case_file where site_id = ?")
            .param(id)
            .query(Integer.class)
            .single()
        > 0;
  }

  private static SiteRecord site(ResultSet row) throws SQLException {
    return new SiteRecord(
        row.getString("site_id"),
        row.getString("name"),
        row.getString("body"),
        time(row.getString("saved_at")));
  }

  /**
   * Reads the time of a description. An unreadable time is replaced, because nothing depends on it
   * and the description should not be lost with it.
   */
  private static Instant time(String column) {
    return Storable.isTime(column) ? Instant.parse(column) : Instant.EPOCH;
  }
}
