package yett.casebook;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** Upgrades the tables to the version that this program knows. */
final class Schema {
  /** The version of the newest migration; a test compares the two. */
  static final int VERSION = 5;

  private static final String HISTORY = "flyway_schema_history";

  private Schema() {}

  /**
   * Upgrades if necessary. It reads the version first, because starting Flyway takes longer than
   * all the rest of opening the casebook, and there is almost never anything to do.
   *
   * @param upgrade whether the tables of an older program may be changed. On a server others may be
   *     using them, so the person responsible for it decides when
   */
  static void bringUpToDate(String where, DataSource database, boolean upgrade)
      throws SQLException {
    List<Integer> applied;
    boolean isOurs;
    try (Connection connection = database.getConnection()) {
      applied = applied(connection);
      isOurs = has(connection, "case_file");
    }
    if (!applied.isEmpty() && !isOurs) {
      throw new FlywayException(
          "a history of tables without the tables",
          CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE);
    }
    int newest = applied.stream().mapToInt(Integer::intValue).max().orElse(0);
    if (newest > VERSION) {
      throw new CasebookException(
          where
              + ": this casebook was written by a newer Yett (its version is "
              + newest
              + ", this program knows "
              + VERSION
              + "). Nothing was changed. Install the newer program.");
    }
    if (newest > 0 && newest < VERSION && !upgrade) {
      throw new CasebookException(
          where
              + ": this casebook is of an older Yett (its version is "
              + newest
              + ", this program needs "
              + VERSION
              + "). Nothing was changed. When nobody is using it and it is backed up, bring it up"
              + " to date with: cases upgrade.");
    }
    if (newest < VERSION) {
      flyway(database).load().migrate();
    }
  }

  static FluentConfiguration flyway(DataSource database) {
    return Flyway.configure(Schema.class.getClassLoader())
        .dataSource(database)
        .locations("classpath:db/casebook")
        .javaMigrations(new Upgrade4(Storable.written(Instant.now())))
        .failOnMissingLocations(true)
        // All files in one transaction. Between two of them a new casebook would look like an older
        // program's to anybody who opens it at that moment, and would stay so if this program died
        // there.
        .group(true)
        .table(HISTORY);
  }

  private static List<Integer> applied(Connection connection) throws SQLException {
    var versions = new ArrayList<Integer>();
    if (!has(connection, HISTORY)) {
      return versions;
    }
    try (var statement = connection.createStatement();
        var rows =
            statement.executeQuery(
                "select version from " + HISTORY + " where version is not null and success")) {
      while (rows.next()) {
        versions.add(rows.getInt(1));
      }
    }
    return versions;
  }

  private static boolean has(Connection connection, String table) throws SQLException {
    try (var tables =
        connection.getMetaData().getTables(null, connection.getSchema(), table, null)) {
      return tables.next();
    }
  }
}
