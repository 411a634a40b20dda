package yett.casebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.flywaydb.core.api.MigrationVersion;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import yett.testing.PostgresServer;

/** The databases that a casebook can be kept in. */
enum Store {
  EMBEDDED {
    @Override
    String newAddress(Path directory) {
      return directory.resolve("casebook.db").toString();
    }
  },
  SERVER {
    @Override
    String newAddress(Path directory) {
      return PostgresServer.shared().newCasebook();
    }
  };

  /** A place for a casebook where there is none yet: a file or a URL. */
  abstract String newAddress(Path directory);

  /**
   * An empty casebook in such a place, laid out once and copied since: what tests wait for most.
   */
  String newCasebook(Path directory) {
    String address = newAddress(directory);
    try {
      if (this == EMBEDDED) {
        Files.write(Path.of(address), Template.FILE);
      } else {
        execute(address, Layout.SQL);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return address;
  }

  /** What the migrations do, without the program that runs them. */
  private static final class Layout {
    private static final String SQL = sql();

    private static String sql() {
      String template = SERVER.newAddress(Path.of(""));
      Casebook.open(template).close();
      String history = template.replaceAll(".*currentSchema=", "") + ".flyway_schema_history";
      return Stream.of(
                  "V1__casebook.sql",
                  "V2__people_and_causes.sql",
                  "V3__seals_and_order.sql",
                  "V5__cases_begun.sql")
              .map(Layout::text)
              .collect(Collectors.joining())
          + "create table flyway_schema_history as table "
          + history
          + ";";
    }

    private static String text(String file) {
      try (InputStream in = Store.class.getResourceAsStream("/db/casebook/" + file)) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static final class Template {
    private static final byte[] FILE = file();

    private static byte[] file() {
      try {
        Path file = Files.createTempDirectory("yett-template").resolve("casebook.db");
        Casebook.open(file).close();
        byte[] content = Files.readAllBytes(file);
        for (String ending : List.of("", ".lock")) {
          Files.delete(file.resolveSibling("casebook.db" + ending));
        }
        Files.delete(file.getParent());
        return content;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  static Casebook open(String address) {
    return address.startsWith("jdbc:") ? Casebook.open(address) : Casebook.open(Path.of(address));
  }

  /** As another program would. */
  static void execute(String address, String... statements) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url(address));
        var statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }

  /** How many lines there are in a table, or in what is said of one. */
  static int count(String address, String table) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url(address));
        var statement = connection.createStatement();
        var rows = statement.executeQuery("select count(*) from " + table)) {
      rows.next();
      return rows.getInt(1);
    }
  }

  /** Lays out the tables as a program of an earlier version did. */
  static void layOut(String address, String version) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url(address))) {
      var database = new SingleConnectionDataSource(connection, true);
      Schema.flyway(database).target(MigrationVersion.fromVersion(version)).load().migrate();
    }
  }

  private static String url(String address) {
    return address.startsWith("jdbc:") ? address : "jdbc:sqlite:" + address;
  }
}
