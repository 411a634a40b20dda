package yett.casebook;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** Brings the tables to the version this program knows. */
final class Schema {
  /** The version of the newest file in db/casebook; a test holds the two together. */
  static final int VERSION = 1;

  private static final String HISTORY = "flyway_schema_history";

  private Schema() {}

  /**
   * Asks for the version first: setting Flyway to work costs more than all the rest of opening the
   * casebook, and almost always finds nothing to do.
   */
  static void bringUpToDate(String where, DataSource database) throws SQLException {
    List<Integer> applied;
    try (Connection connection = database.getConnection()) {
      applied = applied(connection);
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
    if (newest < VERSION) {
      flyway(database).load().migrate();
    }
  }

  static FluentConfiguration flyway(DataSource database) {
    return Flyway.configure(Schema.class.getClassLoader())
        .dataSource(database)
        .locations("classpath:db/casebook")
        .failOnMissingLocations(true)
        .table(HISTORY);
  }

  private static List<Integer> applied(Connection connection) throws SQLException {
    var versions = new ArrayList<Integer>();
    try (var tables = connection.getMetaData().getTables(null, null, HISTORY, null)) {
      if (!tables.next()) {
        return versions;
      }
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
}
