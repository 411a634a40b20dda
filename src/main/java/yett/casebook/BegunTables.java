package yett.casebook;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The SQL of the list of all cases that were ever begun here, by which a case is missed that was
 * removed completely; the caller holds the transaction. Nothing is ever deleted from the list.
 */
record BegunTables(JdbcClient client) {
  private static final String COLUMNS = "id, uid, site_id, opened_at";

  /**
   * A case as it was when it was begun.
   *
   * @param uid empty if it never had a unique name
   * @param siteId the name that the gate had then
   */
  record Begun(String id, String uid, String siteId, String openedAt) {}

  /** Notes a case. If it was noted before, the earlier note stays. */
  void note(Begun begun) {
    client
        .sql(
            "insert into case_begun ("
                + COLUMNS
                + ") values (?, ?, ?, ?) on conflict (id) do nothing")
        .params(begun.id(), begun.uid(), begun.siteId(), begun.openedAt())
        .update();
  }

  /** Notes the unique name that a case keeps in every casebook. */
  void named(String id, String uid) {
    client.sql("update case_begun set uid = ? where id = ? and uid = ''").params(uid, id).update();
  }

  /** Notes that a case has got another number. */
  void renumbered(String from, String to) {
    client.sql("update case_begun set id = ? where id = ?").params(to, from).update();
  }

  /** Whether the number belonged to a case with another unique name. */
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

  /** Those of these cases that were begun here, by number. */
  Map<String, Begun> of(Set<String> ids) {
    return client
        .sql("select " + COLUMNS + " from case_begun where id in (:ids)")
        .param("ids", ids)
        .query(Begun.class)
        .stream()
        .collect(Collectors.toMap(Begun::id, Function.identity()));
  }
}
