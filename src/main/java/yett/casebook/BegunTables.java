package yett.casebook;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The SQL of the list of all cases that were ever begun here, which tells of one that was taken
 * away whole; the caller holds the transaction. Nothing is ever taken out of it.
 */
record BegunTables(JdbcClient client) {
  private static final String COLUMNS = "id, uid, site_id, opened_at";

  /**
   * A case as it was begun.
   *
   * @param uid empty if it never had a name of its own
   * @param siteId the gate by its name of then
   */
  record Begun(String id, String uid, String siteId, String openedAt) {}

  /** Notes a case; one that was begun before and comes back stays as it was noted. */
  void note(Begun begun) {
    client
        .sql(
            "insert into case_begun ("
                + COLUMNS
                + ") values (?, ?, ?, ?) on conflict (id) do nothing")
        .params(begun.id(), begun.uid(), begun.siteId(), begun.openedAt())
        .update();
  }

  /** A case has the name that it keeps in every casebook. */
  void named(String id, String uid) {
    client.sql("update case_begun set uid = ? where id = ? and uid = ''").params(uid, id).update();
  }

  /** A case got another number: it is the same case. */
  void renumbered(String from, String to) {
    client.sql("update case_begun set id = ? where id = ?").params(to, from).update();
  }

  /** Whether it was the number of another case than the one with this name. */
  boolean isOfAnother(String id, String uid) {
    return of(id).filter(b -> !b.uid().equals(uid)).isPresent();
  }

  Optional<Begun> of(String id) {
    return client
        .sql("select " + COLUMNS + " from case_begun where id = ?")
        .param(id)
        .query(Begun.class)
        .optional();
  }

  /** Those of these cases that were begun, by their numbers. */
  Map<String, Begun> of(Set<String> ids) {
    return client
        .sql("select " + COLUMNS + " from case_begun where id in (:ids)")
        .param("ids", ids)
        .query(Begun.class)
        .stream()
        .collect(Collectors.toMap(Begun::id, Function.identity()));
  }
}
