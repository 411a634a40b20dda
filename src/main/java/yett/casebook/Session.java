package yett.casebook;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/** A connection to the casebook's database, with the tables accessed through it. */
final class Session implements AutoCloseable {
  private final SingleConnectionDataSource database;
  private final boolean embedded;
  private final Transactions transactions;
  private final Transactions snapshots;
  private final CaseTables cases;
  private final EventTables events;
  private final AuditTables audits;
  private final SiteTables sites;
  private final PeopleTables people;
  private final CarryTables carrying;
  private final Renaming renaming;

  private Session(SingleConnectionDataSource database, boolean embedded) throws SQLException {
    this.database = database;
    this.embedded = embedded;
    this.transactions =
        new Transactions(
            database.getConnection(), embedded ? SqliteFile.BEGIN : PostgresServer.BEGIN);
    this.snapshots =
        new Transactions(
            database.getConnection(), embedded ? SqliteFile.SNAPSHOT : PostgresServer.SNAPSHOT);
    var template = new JdbcTemplate(database);
    var client = JdbcClient.create(template);
    this.events = new EventTables(template);
    var begun = new BegunTables(client);
    this.cases = new CaseTables(client, events, begun);
    this.audits = new AuditTables(client, cases, events, begun);
    this.sites = new SiteTables(client);
    this.people = new PeopleTables(client);
    this.renaming = new Renaming(sites);
    this.carrying = new CarryTables(cases, sites, people, renaming);
  }

  /**
   * @param where how messages name the database
   * @param upgrade whether tables of an older program may be changed
   */
  static Session open(String where, Address address, boolean upgrade) throws SQLException {
    boolean embedded = SqliteFile.isUrl(address.url());
    var database = new SingleConnectionDataSource(connect(address, upgrade), true);
    try {
      Schema.bringUpToDate(where, database, embedded || upgrade);
      if (embedded) {
        SqliteFile.writeAhead(database.getConnection());
      }
      return new Session(database, embedded);
    } catch (SQLException | RuntimeException | Error e) {
      database.destroy();
      throw e;
    }
  }

  private static Connection connect(Address address, boolean upgrade) throws SQLException {
    if (SqliteFile.isUrl(address.url())) {
      return SqliteFile.connect(address.url());
    }
    return address.isServer()
        ? PostgresServer.connect(address, upgrade)
        : DriverManager.getConnection(address.url());
  }

  Transactions transactions() {
    return transactions;
  }

  /** Transactions for several reading statements that have to see the same data. */
  Transactions snapshots() {
    return snapshots;
  }

  EventTables events() {
    return events;
  }

  AuditTables audits() {
    return audits;
  }

  CaseTables cases() {
    return cases;
  }

  SiteTables sites() {
    return sites;
  }

  Renaming renaming() {
    return renaming;
  }

  PeopleTables people() {
    return people;
  }

  CarryTables carrying() {
    return carrying;
  }

  /** Removes all traces of deleted data, as far as this program can. */
  void wipe() throws SQLException {
    if (embedded) {
      SqliteFile.wipe(database.getConnection());
    }
  }

  @Override
  public void close() {
    database.destroy();
  }
}
