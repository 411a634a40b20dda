package yett.casebook;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/** A connection to the casebook's database, and what works over it. */
final class Session implements AutoCloseable {
  private final SingleConnectionDataSource database;
  private final Transactions transactions;
  private final CaseTables cases;
  private final SiteTables sites;
  private final PeopleTables people;

  private Session(SingleConnectionDataSource database, Transactions transactions) {
    this.database = database;
    this.transactions = transactions;
    var client = JdbcClient.create(database);
    this.cases = new CaseTables(client);
    this.sites = new SiteTables(client);
    this.people = new PeopleTables(client);
  }

  /**
   * @param where how messages call the database
   * @param upgrade whether tables of an older program may be changed
   */
  static Session open(String where, String url, boolean upgrade) throws SQLException {
    boolean embedded = SqliteFile.isUrl(url);
    var database = new SingleConnectionDataSource(connect(url), true);
    try {
      Schema.bringUpToDate(where, database, embedded || upgrade);
      var connection = database.getConnection();
      if (embedded) {
        SqliteFile.writeAhead(connection);
      }
      return new Session(
          database,
          new Transactions(connection, embedded ? SqliteFile.BEGIN : PostgresServer.BEGIN));
    } catch (SQLException | RuntimeException | Error e) {
      database.destroy();
      throw e;
    }
  }

  private static Connection connect(String url) throws SQLException {
    if (SqliteFile.isUrl(url)) {
      return SqliteFile.connect(url);
    }
    return PostgresServer.isUrl(url)
        ? PostgresServer.connect(url)
        : DriverManager.getConnection(url);
  }

  Transactions transactions() {
    return transactions;
  }

  CaseTables cases() {
    return cases;
  }

  SiteTables sites() {
    return sites;
  }

  PeopleTables people() {
    return people;
  }

  @Override
  public void close() {
    database.destroy();
  }
}
