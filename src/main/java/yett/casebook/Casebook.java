package yett.casebook;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.flywaydb.core.api.FlywayException;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/**
 * The store of cases and sites. What {@link #append} was given is on the disk when it returns, and
 * stays there as it was: events are only ever added.
 *
 * <pre>{@code
 * try (var casebook = Casebook.open(DataDirectory.ofUser().casebook())) {
 *   CaseId id = casebook.newCase("harrow-quay-3", now);
 *   casebook.append(id, 0, new NewEvent(now, "A. Moor", "answered", "{\"check\":\"chain-sag\"}"));
 * }
 * }</pre>
 *
 * <p>May be shared by threads, which then take turns; any number of programs may have the same
 * casebook open. Every method throws {@link CasebookException} when the database fails.
 */
public final class Casebook implements AutoCloseable {
  private final String where;
  private final SingleConnectionDataSource database;
  private final Transactions transactions;
  private final CaseTables cases;
  private final SiteTables sites;

  private Casebook(String where, SingleConnectionDataSource database, Transactions transactions) {
    this.where = where;
    this.database = database;
    this.transactions = transactions;
    var client = JdbcClient.create(database);
    this.cases = new CaseTables(client);
    this.sites = new SiteTables(client);
  }

  /** Opens the casebook in a file, and makes the directory, the file and its tables if need be. */
  public static Casebook open(Path file) {
    String where = file.toString();
    try {
      SqliteFile.createDirectory(file.toAbsolutePath().getParent());
      return SqliteFile.aloneWhileOpening(file, () -> open(where, SqliteFile.url(file)));
    } catch (IOException | SQLException | DataAccessException | FlywayException | LinkageError e) {
      throw Troubles.explained(where, e);
    }
  }

  /**
   * Opens the casebook a JDBC URL leads to, and makes its tables if need be. The database itself
   * must exist, unless the URL names a file; but for a file {@link #open(Path)} is better, because
   * it also keeps two programs apart that both start on a new one.
   */
  public static Casebook open(String jdbcUrl) {
    // What follows may hold a password.
    String where = jdbcUrl.split("\\?", 2)[0];
    try {
      return open(where, jdbcUrl);
    } catch (SQLException | DataAccessException | FlywayException | LinkageError e) {
      throw Troubles.explained(where, e);
    }
  }

  private static Casebook open(String where, String url) throws SQLException {
    boolean embedded = SqliteFile.isUrl(url);
    var connection = embedded ? SqliteFile.connect(url) : DriverManager.getConnection(url);
    var database = new SingleConnectionDataSource(connection, true);
    try {
      Schema.bringUpToDate(where, database);
      if (embedded) {
        SqliteFile.writeAhead(connection);
      }
      var transactions = new Transactions(connection, embedded ? SqliteFile.BEGIN : "begin");
      return new Casebook(where, database, transactions);
    } catch (SQLException | RuntimeException | Error e) {
      database.destroy();
      throw e;
    }
  }

  /** Begins a case without events. Its site need not have been saved. */
  public CaseId newCase(String siteId, Instant at) {
    Storable.text("site", siteId);
    Storable.time("at", at);
    return write(() -> cases.begin(siteId, at));
  }

  /**
   * Adds events to the end of a case, all or none.
   *
   * @param expectedSeq the number of the last event the writer knows, 0 for none
   * @return the events with their numbers
   * @throws CaseMovedOn if there are events after that one; nothing is added then
   */
  public List<StoredEvent> append(CaseId id, long expectedSeq, NewEvent... events) {
    return write(() -> cases.append(id, expectedSeq, List.of(events)));
  }

  /** As {@link #append(CaseId, long, NewEvent...)}, and changes the summary in the same breath. */
  public List<StoredEvent> append(
      CaseId id, long expectedSeq, Summary summary, List<NewEvent> events) {
    return write(
        () -> {
          var stored = cases.append(id, expectedSeq, events);
          cases.summarise(id, summary);
          return stored;
        });
  }

  /** All events of a case, oldest first. */
  public List<StoredEvent> events(CaseId id) {
    return eventsAfter(id, 0);
  }

  /** The events of a case after the one with the given number, oldest first. */
  public List<StoredEvent> eventsAfter(CaseId id, long seq) {
    return read(() -> cases.eventsAfter(id, seq));
  }

  /** All cases, the one last written to first. */
  public List<CaseSummary> cases() {
    return read(cases::all);
  }

  /** The cases in one state, the one last written to first. */
  public List<CaseSummary> cases(CaseState state) {
    return cases().stream().filter(line -> line.summary().state() == state).toList();
  }

  /** One case's line in the list. */
  public CaseSummary summary(CaseId id) {
    return read(() -> cases.summary(id));
  }

  /**
   * The case somebody means: a whole id, its number ("7" for 2026-0007), or the beginning of it.
   *
   * @throws CaseNotFound if that is no case, with the nearest; or several, with all of them
   */
  public CaseId find(String typed) {
    return read(() -> CaseFinder.find(typed, cases.ids()));
  }

  /** Keeps a site's description as its newest revision; the older ones stay. */
  public void saveSite(SiteRecord site) {
    write(() -> sites.save(site));
  }

  /** A site's newest revision, if it was ever saved. */
  public Optional<SiteRecord> site(String id) {
    var history = siteHistory(id);
    return history.isEmpty() ? Optional.empty() : Optional.of(history.get(0));
  }

  /** All revisions of a site, newest first. */
  public List<SiteRecord> siteHistory(String id) {
    return read(() -> sites.history(id));
  }

  /** The newest revision of every site, by name. */
  public List<SiteRecord> sites() {
    return read(sites::newest);
  }

  @Override
  public synchronized void close() {
    database.destroy();
  }

  /** One at a time: there is one connection, and people type slowly. */
  private synchronized <T> T write(Supplier<T> work) {
    try {
      return transactions.run(work);
    } catch (SQLException | DataAccessException e) {
      throw Troubles.explained(where, e);
    }
  }

  private synchronized <T> T read(Supplier<T> work) {
    try {
      return work.get();
    } catch (DataAccessException e) {
      throw Troubles.explained(where, e);
    } catch (IllegalArgumentException | DateTimeException e) {
      throw Troubles.unreadable(where, e);
    }
  }
}
