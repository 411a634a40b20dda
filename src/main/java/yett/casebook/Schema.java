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

/** Brings the tables to the version this program knows. */
final class Schema {
  /** The version of the newest migration; a test holds the two together. */
  static final int VERSION = 5;

  private static final String HISTORY = "flyway_schema_history";

  private Schema() {}

  /**
   * Asks for the version first: setting Flyway to work costs more than all the rest of opening the
   * casebook, and almost always finds nothing to do.
   *
   * @param upgrade whether the tables of an older program may be changed. Others may be working
   *     with those of a server: whoever is responsible for it says when.
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
        // All files in one transaction: between two of them a new casebook would look like an older
        // program's to whoever opens it just then, and stay one if this program died there.
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
